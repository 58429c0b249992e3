package slipway.web.episode.locate;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.locate.FindingSources;
import slipway.reasoning.locate.Location;

/**
 * A located place with what speaks for and against it.
 *
 * @param pro strongest first
 * @param con strongest first
 */
public record Weighed(Location.RankedSite site, List<Weight> pro, List<Weight> con) {
    /** A ratio nearer to 1 than this changes nothing that anybody would notice. */
    private static final double NOTICED = 1.1;

    public Weighed {
        pro = List.copyOf(pro);
        con = List.copyOf(con);
    }

    /**
     * What one finding does to the odds of the place.
     *
     * @param ratio how many times the odds change
     * @param sources where the numbers behind it come from
     */
    public record Weight(String finding, double ratio, List<FindingSources.Source> sources) {
        public Weight {
            sources = List.copyOf(sources);
        }
    }

    static Weighed of(Location.RankedSite site, List<Finding> findings) {
        return new Weighed(
                site,
                weights(site, findings, ratio -> ratio >= NOTICED),
                weights(site, findings, ratio -> ratio <= 1 / NOTICED));
    }

    private static List<Weight> weights(Location.RankedSite site, List<Finding> findings, Predicate<Double> noticed) {
        return site.reasons().stream()
                .filter(reason -> noticed.test(reason.ratio()))
                .map(reason -> new Weight(reason.finding(), reason.ratio(), sources(reason.finding(), findings)))
                .toList();
    }

    /** Neural tests of one nerve weigh together and are told in one reason, joined by "and". */
    private static List<FindingSources.Source> sources(String reason, List<Finding> findings) {
        List<String> texts = Arrays.asList(reason.split(" and ", -1));
        return findings.stream()
                .filter(finding -> texts.contains(finding.text()))
                .flatMap(finding -> FindingSources.of(finding).stream())
                .distinct()
                .toList();
    }
}
