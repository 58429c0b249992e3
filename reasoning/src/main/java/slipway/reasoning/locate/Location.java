package slipway.reasoning.locate;

import java.util.List;
import java.util.Optional;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;

/**
 * Answer of the locator with its basis.
 *
 * @param sites all sites, likeliest first; chances sum to 1
 * @param scored the same in the names of lists of published cases, where all mimics count as {@code not_nerve}
 * @param pairs the likeliest pairs of sites, and how likely a pair is at all
 * @param side how likely the trouble is on one side
 * @param unexplained abnormal findings that the leading site does not explain
 * @param notUsed findings that the ranking could not use
 * @param verdict what can be said in a sentence
 */
public record Location(
        List<RankedSite> sites,
        List<ScoredSite> scored,
        Pairs pairs,
        SideChance side,
        List<Finding> unexplained,
        List<NotUsed> notUsed,
        Verdict verdict) {
    /**
     * One site.
     *
     * @param site the site
     * @param probability chance that the trouble is there
     * @param interval its range, from the uncertainty of the coefficients
     * @param reasons what speaks for and against it, strongest first
     */
    public record RankedSite(LesionSite site, double probability, Interval interval, List<Reason> reasons) {
        public RankedSite {
            reasons = List.copyOf(reasons);
        }
    }

    /** The 5 and 95 % bounds over draws of the coefficients. */
    public record Interval(double low, double high) {}

    /**
     * What one finding does to a site.
     *
     * @param finding in words
     * @param ratio how many times it changes the odds of the site; above 1 speaks for it
     */
    public record Reason(String finding, double ratio) {}

    /** A site under its name in lists of published cases. */
    public record ScoredSite(String site, double probability) {}

    /** Two sites hit at once: the chance of any pair, and the likeliest. */
    public record Pairs(double chance, List<Pair> likeliest) {
        public Pairs {
            likeliest = List.copyOf(likeliest);
        }
    }

    /** One pair of sites. */
    public record Pair(String first, String second, double probability) {}

    /** Chance of each side alone; the rest is both sides. */
    public record SideChance(double left, double right) {
        /** The side that is at least nine times as likely as the other. */
        public Optional<Side> clear() {
            if (left > 9 * right) {
                return Optional.of(Side.LEFT);
            }
            return right > 9 * left ? Optional.of(Side.RIGHT) : Optional.empty();
        }
    }

    /**
     * What can be said.
     *
     * @param enough whether the findings point to one site
     * @param sentence plain sentence
     * @param notes further remarks, for example what the bedside cannot tell apart
     */
    public record Verdict(boolean enough, String sentence, List<String> notes) {
        public Verdict {
            notes = List.copyOf(notes);
        }
    }

    public Location {
        sites = List.copyOf(sites);
        scored = List.copyOf(scored);
        unexplained = List.copyOf(unexplained);
        notUsed = List.copyOf(notUsed);
    }

    /** The likeliest site. */
    public RankedSite leading() {
        return sites.get(0);
    }

    /** Chance of the site of this name; 0 if there is none. */
    public double probability(String site) {
        return sites.stream()
                .filter(ranked -> ranked.site().name().equals(site))
                .mapToDouble(RankedSite::probability)
                .findFirst()
                .orElse(0);
    }
}
