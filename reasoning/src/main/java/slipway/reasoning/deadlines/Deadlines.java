package slipway.reasoning.deadlines;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * Deadlines of an episode. Days are counted after the first treatment day: with the first on 5 January, 30 days later is
 * 4 February. Where a source could mean that the first day counts, the earlier day is warned of in words.
 */
public final class Deadlines {
    private final PaperRule rule;
    private final PaperTrail trail;
    private final LocalDate asOf;
    private final List<Deadline> found = new ArrayList<>();

    private Deadlines(PaperRule rule, PaperTrail trail, LocalDate asOf) {
        this.rule = rule;
        this.trail = trail;
        this.asOf = asOf;
    }

    /** All deadlines of an episode, as they stand on a day. */
    public static List<Deadline> of(PaperRule rule, PaperTrail trail, LocalDate asOf) {
        var deadlines = new Deadlines(rule, trail, asOf);
        rule.certificationDays().ifPresent(deadlines::certification);
        rule.recertificationDays().ifPresent(deadlines::recertification);
        rule.progressTreatmentDays().ifPresent(deadlines::report);
        return List.copyOf(deadlines.found);
    }

    private void certification(int days) {
        LocalDate due = trail.first().plusDays(days);
        boolean sending = rule.sendingIsEnough() && trail.orderInRecord();
        Optional<LocalDate> done = Stream.concat(
                        trail.certified().stream(), sending ? trail.planSent().stream() : Stream.empty())
                .min(LocalDate::compareTo);
        String what = sending
                ? "the plan must be sent to the physician, with proof, or signed"
                : "the plan must be signed by the physician";
        add(
                Deadline.Kind.CERTIFICATION,
                due,
                done,
                "By %s %s: %d days after the first treatment day.".formatted(due, what, days));
    }

    /** From the last certification on, or from the first treatment day; the plan's own end may come first. */
    private void recertification(int days) {
        // The first signature covers the time from the first treatment day, whenever it came.
        LocalDate start =
                trail.recertified().stream().reduce((first, second) -> second).orElse(trail.first());
        LocalDate limit = start.plusDays(days);
        LocalDate due = trail.planEnds()
                .filter(end -> end.isAfter(start) && end.isBefore(limit))
                .orElse(limit);
        String why = due.equals(limit)
                ? "%d days; %s if the first day counts too".formatted(days, limit.minusDays(1))
                : "the plan ends then";
        add(
                Deadline.Kind.RECERTIFICATION,
                due,
                Optional.empty(),
                "By %s the plan must be certified again or care must end: %s.".formatted(due, why));
    }

    private void report(int days) {
        Optional<LocalDate> last = trail.reports().stream().reduce((first, second) -> second);
        int covered = last.map(day -> treated(day)).orElse(0);
        int by = covered + days;
        int so = trail.treatmentDays().size();
        Optional<LocalDate> due = so >= by ? Optional.of(trail.treatmentDays().get(by - 1)) : Optional.empty();
        boolean late = due.filter(day -> day.isBefore(asOf)).isPresent() || so > by;
        String text = "A progress report is due by treatment day %d; so far %d, the evaluation being day 1."
                .formatted(by, so);
        found.add(new Deadline(
                Deadline.Kind.PROGRESS_REPORT,
                due,
                OptionalInt.of(by),
                late ? Deadline.State.OVERDUE : Deadline.State.OPEN,
                text));
    }

    /** How many treatment days lie up to a day, that day included. */
    private int treated(LocalDate day) {
        return (int) trail.treatmentDays().stream()
                .filter(each -> !each.isAfter(day))
                .count();
    }

    private void add(Deadline.Kind kind, LocalDate due, Optional<LocalDate> done, String text) {
        Deadline.State missing = asOf.isAfter(due) ? Deadline.State.OVERDUE : Deadline.State.OPEN;
        Deadline.State state = done.map(day -> day.isAfter(due) ? Deadline.State.DONE_LATE : Deadline.State.DONE)
                .orElse(missing);
        found.add(new Deadline(kind, Optional.of(due), OptionalInt.empty(), state, text));
    }
}
