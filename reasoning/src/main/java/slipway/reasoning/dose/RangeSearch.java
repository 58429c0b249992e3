package slipway.reasoning.dose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.tolerance.LoadDraws;

/** The end postures of one candidate that may be reached, nearest first, and the first one that may not. */
final class RangeSearch {
    /** Sums of a few thousand weights carry this much rounding. */
    static final double ROUNDING = 1e-9;

    /** Ends that are solved together: neighbours are cheaper, but those beyond the limit are wasted. */
    private static final int BATCH = 6;

    private final LoadDraws draws;
    private final Guards guards;
    private final Site site;
    private final double[] limitPct;

    RangeSearch(LoadDraws draws, Guards guards, Site site, double[] limitPct) {
        this.draws = draws;
        this.guards = guards;
        this.site = site;
        this.limitPct = limitPct;
    }

    /**
     * One end posture, tried along its whole way.
     *
     * @param glideMm median of the glide at the site
     * @param forbidden the guards that forbid it
     */
    record Step(Posture end, LoadProfile profile, double glideMm, double probabilityAbove, List<Reason> forbidden) {
        boolean allowed() {
            return forbidden.isEmpty() && probabilityAbove <= 1 - DoseData.value("chance-below-limit") + ROUNDING;
        }
    }

    /** What was found. */
    record Found(List<Step> allowed, Optional<Step> stopped) {}

    /**
     * Goes outward until an end is not allowed: what lies beyond it is never reached. The way passes the rounded ends;
     * for several joints, whose rounded ends do not lie on one line, a chosen end is tried {@link #exactly} again.
     */
    Found run(ExerciseCandidate candidate, List<Posture> ends) {
        var allowed = new ArrayList<Step>();
        Trail trail = trail(candidate.start());
        int last = lastToTry(ends);
        for (int i = 0; i < last; i++) {
            if (i % BATCH == 0) {
                draws.prepare(ends.subList(i, Math.min(last, i + BATCH)));
            }
            trail.add(ends.get(i));
            Step step = trail.stepTo(ends.get(i));
            if (!step.allowed()) {
                return new Found(allowed, Optional.of(step));
            }
            allowed.add(step);
        }
        return new Found(allowed, Optional.empty());
    }

    /** One past the first end that a guard forbids: guards cost nothing, and nothing beyond it is ever reached. */
    private int lastToTry(List<Posture> ends) {
        int last = 0;
        while (last < ends.size() && guards.forbids(ends.get(last)).isEmpty()) {
            last++;
        }
        return Math.min(ends.size(), last + 1);
    }

    /** The same end along the straight way from the start, with its already rounded angles. */
    Step exactly(ExerciseCandidate candidate, Step step) {
        if (candidate.moves().size() == 1) {
            return step;
        }
        List<Posture> between = RangeSteps.between(candidate, step.end());
        draws.prepare(between);
        Trail trail = trail(candidate.start());
        between.forEach(trail::add);
        trail.add(step.end());
        return trail.stepTo(step.end());
    }

    private Trail trail(Posture start) {
        return new Trail(new LoadProfile(draws, site, start), new ArrayList<>(guards.forbids(start)));
    }

    /** A way that grows: its loads and the first guards that it meets. */
    private final class Trail {
        private final LoadProfile profile;
        private final List<Reason> forbidden;

        Trail(LoadProfile profile, List<Reason> forbidden) {
            this.profile = profile;
            this.forbidden = forbidden;
        }

        void add(Posture posture) {
            profile.add(posture);
            if (forbidden.isEmpty()) {
                forbidden.addAll(guards.forbids(posture));
            }
        }

        /** The angles are rounded already, so the chance is that of the range which would be given. */
        Step stepTo(Posture end) {
            double above = profile.probabilityAbove(limitPct);
            return new Step(end, profile.copy(), profile.glideMm(), above, List.copyOf(forbidden));
        }
    }
}
