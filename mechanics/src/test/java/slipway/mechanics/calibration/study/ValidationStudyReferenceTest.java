package slipway.mechanics.calibration.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import slipway.mechanics.body.Person;
import slipway.mechanics.calibration.EvidenceTable;
import slipway.mechanics.calibration.Prediction;
import slipway.mechanics.calibration.Quantity;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.pathway.PathwayModel;

/** What the committed fit says about facts that it was never fitted to. */
class ValidationStudyReferenceTest {
    /** Aim of the project: share of draws in which the order of two measurements comes out right. */
    private static final double ORDER_SHARE = 0.9;

    private static final PathwayModel MODEL =
            new PathwayModel(Person.STANDARD, FittedParameters.bundled().standardDraws());

    private static final LoadFacts FACTS = new LoadFacts(MODEL);

    /**
     * Alshami et al 2008 (J Appl Biomech 24:368), Ellis et al 2012 (JOSPT 42:667), Andrade et al 2016 (J Biomech 49:326). The last
     * is a known miss (docs/validation.md): it holds in most draws, not in nine of ten. When it does, this fails and the page
     * is out of date.
     */
    @Test
    void publishedOrdersHoldInNineOfTenDrawsButForOneThatHoldsInMost() {
        Map<String, Double> shares = Prediction.of(
                        MODEL, EvidenceTable.bundled().rows())
                .stream()
                .filter(p -> p.row().quantity() == Quantity.ORDER)
                .collect(Collectors.toMap(p -> p.row().id(), p -> p.holds().orElseThrow()));
        assertThat(shares).containsOnlyKeys("alshami2008order", "ellis2012order", "andrade2016");
        assertThat(shares.entrySet().stream()
                        .filter(order -> order.getValue() < ORDER_SHARE)
                        .map(Map.Entry::getKey))
                .containsExactly("andrade2016");
        assertThat(shares.get("andrade2016")).isGreaterThan(0.5);
    }

    /** Boyd & Villa 2012 (BMC Musculoskelet Disord 13:245): −8.6 deg; Boyd et al 2009: −5.5 to −10.1 deg. */
    @Test
    void meanStrainShiftsTheLimitOfARaisedLegAsInPeople() {
        double shiftDeg = median(FACTS.raiseShiftDeg(1));
        assertThat(shiftDeg).isBetween(-10.1, -5.5);
    }

    /** Common practice: most people with a leg raise limited at 40 to 60 deg can sit; held to the upper end here. */
    @Test
    void sittingLoadsLessThanARaiseOfSixtyDegreesInMostDraws() {
        double[] raiseDeg = FACTS.sittingAsRaiseDeg(1);
        assertThat(Arrays.stream(raiseDeg).filter(deg -> deg < 60).count()).isGreaterThan(raiseDeg.length / 2);
    }

    /** The known miss that the load measure exists for: when this fails, decision 0005 is out of date. */
    @Test
    void strainAtTheSiteAloneMissesBothFacts() {
        assertThat(median(FACTS.raiseShiftDeg(0))).isGreaterThan(-5.5);
        assertThat(median(FACTS.sittingAsRaiseDeg(0))).isGreaterThan(60);
    }

    private static double median(double[] draws) {
        return Arrays.stream(draws).sorted().skip(draws.length / 2).findFirst().orElseThrow();
    }
}
