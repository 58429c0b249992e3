package slipway.reasoning.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import slipway.reasoning.ReasoningData;
import slipway.reasoning.measures.Change;
import slipway.reasoning.measures.Measure;
import slipway.reasoning.measures.Measures;
import slipway.reasoning.measures.Numbers;

/**
 * Checks a goal and names every flaw. Sources: components of a goal as asked for by a Medicare contractor after APTA;
 * O'Neill & Harris 1982; that the change must be more than the error of the measure is this program's own rule.
 */
public final class GoalCheck {
    private static final List<String> NOT_AN_ACTIVITY = ReasoningData.table("course/not-an-activity.csv").stream()
            .map(row -> row.get("phrase"))
            .toList();

    private final GoalDraft draft;
    private final List<Flaw> flaws = new ArrayList<>();

    private GoalCheck(GoalDraft draft) {
        this.draft = draft;
    }

    /** What is wrong with a goal. */
    public enum Kind {
        NO_PERSON,
        NO_FUNCTION,
        NO_CONDITION,
        NO_MEASURE,
        NO_BASELINE,
        NO_TARGET,
        NO_DATE,
        PAST_DATE,
        OUTSIDE_SCALE,
        WRONG_WAY,
        WITHIN_ERROR,
        /** Only a hint: people may not notice a change of this size. */
        NOT_IMPORTANT;

        /** Whether the goal can stand in spite of it. */
        public boolean hint() {
            return this == NOT_IMPORTANT;
        }
    }

    /** One flaw in words. */
    public record Flaw(Kind kind, String text) {}

    /**
     * The outcome.
     *
     * @param goal present if there is no flaw but hints
     */
    public record Verdict(Optional<Goal> goal, List<Flaw> flaws) {
        public Verdict {
            flaws = List.copyOf(flaws);
        }
    }

    /**
     * Checks a draft.
     *
     * @param written the day on which it is written
     */
    public static Verdict of(GoalDraft draft, LocalDate written) {
        return new GoalCheck(draft).check(written);
    }

    private Verdict check(LocalDate written) {
        words();
        Optional<Measure> measure = measure();
        need(draft.baseline().isPresent(), Kind.NO_BASELINE, "say where the person stands now");
        need(draft.target().isPresent(), Kind.NO_TARGET, "say which score is to be reached");
        date(written);
        measure.ifPresent(this::numbers);
        if (!flaws.stream().allMatch(flaw -> flaw.kind().hint())) {
            return new Verdict(Optional.empty(), flaws);
        }
        return new Verdict(
                measure.map(m -> new Goal(
                        draft.id(),
                        draft.person().strip(),
                        draft.activity().strip(),
                        draft.condition().strip(),
                        m,
                        draft.baseline().getAsDouble(),
                        draft.target().getAsDouble(),
                        draft.due().orElseThrow())),
                flaws);
    }

    private void words() {
        need(!draft.person().isBlank(), Kind.NO_PERSON, "say who");
        String activity = draft.activity().strip().toLowerCase(Locale.ROOT);
        if (activity.isEmpty()) {
            add(Kind.NO_FUNCTION, "say which activity of daily life");
        } else {
            NOT_AN_ACTIVITY.stream()
                    .filter(activity::startsWith)
                    .findFirst()
                    .ifPresent(phrase -> add(
                            Kind.NO_FUNCTION,
                            "\"%s\" is not an activity of daily life; say what the person will do".formatted(phrase)));
        }
        need(
                !draft.condition().isBlank(),
                Kind.NO_CONDITION,
                "say under which condition: how long, where, with what help");
    }

    private Optional<Measure> measure() {
        Optional<Measure> found = draft.measureId().flatMap(Measures.bundled()::find);
        need(
                found.isPresent(),
                Kind.NO_MEASURE,
                draft.measureId().map(id -> "there is no measure " + id).orElse("say by which measure it is seen"));
        return found;
    }

    private void date(LocalDate written) {
        if (draft.due().isEmpty()) {
            add(Kind.NO_DATE, "say by which day");
        } else if (!draft.due().get().isAfter(written)) {
            add(
                    Kind.PAST_DATE,
                    "the day must be after %s, was %s"
                            .formatted(written, draft.due().get()));
        }
    }

    private void numbers(Measure measure) {
        boolean from = inside(measure, "baseline", draft.baseline());
        boolean to = inside(measure, "target", draft.target());
        if (!from || !to) {
            return;
        }
        Change change =
                measure.change(draft.baseline().getAsDouble(), draft.target().getAsDouble());
        if (!(change.gain() > 0)) {
            add(
                    Kind.WRONG_WAY,
                    "the target %s is not better than the baseline %s"
                            .formatted(measure.text(change.to()), measure.text(change.from())));
        } else if (change.kind() == Change.Kind.WITHIN_ERROR) {
            add(
                    Kind.WITHIN_ERROR,
                    "a change of %s may be error of the measure: %s"
                            .formatted(
                                    Numbers.text(change.gain()),
                                    change.reasons().get(0).text()));
        } else if (change.kind() == Change.Kind.REAL
                && measure.thresholds().mcid().isPresent()) {
            add(
                    Kind.NOT_IMPORTANT,
                    "a change of %s is real, but people call %s important"
                            .formatted(
                                    Numbers.text(change.gain()),
                                    Numbers.text(
                                            measure.thresholds().mcid().get().value())));
        }
    }

    /** Whether a number is there and on the scale; one off the scale is a flaw. */
    private boolean inside(Measure measure, String what, OptionalDouble score) {
        if (score.isPresent() && !measure.range().holds(score.getAsDouble())) {
            add(
                    Kind.OUTSIDE_SCALE,
                    "the %s must be within %s and %s, was %s"
                            .formatted(
                                    what,
                                    Numbers.text(measure.range().low()),
                                    Numbers.text(measure.range().high()),
                                    Numbers.text(score.getAsDouble())));
            return false;
        }
        return score.isPresent();
    }

    private void need(boolean there, Kind kind, String text) {
        if (!there) {
            add(kind, text);
        }
    }

    private void add(Kind kind, String text) {
        flaws.add(new Flaw(kind, text));
    }
}
