package slipway.reasoning.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Whether care can end.
 *
 * @param missing what is missing, in words; empty when it can
 */
public record Discharge(List<String> missing) {
    public Discharge {
        missing = List.copyOf(missing);
    }

    /** Whether nothing is missing. */
    public boolean ready() {
        return missing.isEmpty();
    }

    /**
     * How it went alone.
     *
     * @param days since the last visit; empty if there was none
     * @param flares reported in these days; empty if nothing was reported, which is not the same as none
     */
    public record Alone(OptionalInt days, OptionalInt flares) {
        /** Nothing known. */
        public static final Alone UNKNOWN = new Alone(OptionalInt.empty(), OptionalInt.empty());
    }

    /**
     * What to do when it comes back.
     *
     * @param restartRung of the ladder, from 1
     * @param callIf when to call the clinic, at least one
     */
    public record RelapsePlan(int restartRung, List<String> callIf) {
        public RelapsePlan {
            callIf = List.copyOf(callIf);
            if (restartRung < 1 || callIf.isEmpty()) {
                throw new IllegalArgumentException(
                        "a relapse plan needs a rung from 1 on and a reason to call, was rung " + restartRung);
            }
        }

        /** The plan as sentences for the person. */
        public List<String> sentences() {
            var sentences = new ArrayList<String>();
            sentences.add("If it comes back, start again at step %d.".formatted(restartRung));
            callIf.forEach(reason -> sentences.add("Call us if " + reason + "."));
            return sentences;
        }
    }

    static Discharge of(List<Outlook> goals, Alone alone, Optional<RelapsePlan> plan) {
        var missing = new ArrayList<String>();
        if (goals.isEmpty()) {
            missing.add("no goal was set");
        }
        goals.stream()
                .filter(goal -> goal.state() != Outlook.State.MET)
                .forEach(goal -> missing.add("goal not met: " + goal.goal().activity()));
        int needed = CourseData.whole("stable-days");
        if (alone.days().orElse(0) < needed) {
            missing.add("%d of %d days without a visit".formatted(alone.days().orElse(0), needed));
        }
        if (alone.flares().isEmpty()) {
            missing.add("no report on flares while alone");
        } else if (alone.flares().getAsInt() > 0) {
            missing.add("%d flares while alone".formatted(alone.flares().getAsInt()));
        }
        if (plan.isEmpty()) {
            missing.add("no plan for a relapse");
        }
        return new Discharge(missing);
    }
}
