package slipway.reasoning.tolerance;

import java.util.List;
import java.util.Optional;
import slipway.reasoning.basis.Reason;

/**
 * What is known of a tolerance, as the plan shows it.
 *
 * @param restPosture in the text form of a posture
 * @param alpha empty if no suspected site is modelled
 * @param perSite empty if no fraction can be given; the reasons say why
 * @param effectiveDraws how many equally good draws the weights amount to; 0 without a modelled site
 */
public record ToleranceReport(
        String restPosture,
        Optional<AlphaReport> alpha,
        List<SiteTolerance> perSite,
        double effectiveDraws,
        BehavesLikeNerve behavesLikeNerve,
        List<Reason> reasons) {
    public ToleranceReport {
        perSite = List.copyOf(perSite);
        reasons = List.copyOf(reasons);
    }
}
