package slipway.reasoning.deadlines;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * Worked dates for a first treatment on 5 January 2026: plan due on 4 February (30 days), 90-day limit on 5 April (4 April if
 * the first day counts), progress report by treatment day 10, the evaluation being day 1. Rules: Benefit Policy Manual
 * ch. 15 §220 and 42 CFR 424 subpart B in contractors' copies; dates by the calendar.
 */
class DeadlinesReferenceTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
    private static final PaperRule RULE = PaperRule.find("us-part-b", FIRST).orElseThrow();

    @Test
    void datesOfTheWorkedExample() {
        List<Deadline> all = Deadlines.of(RULE, trail(1, true), FIRST);
        assertThat(all)
                .extracting(Deadline::kind, deadline -> deadline.due().orElse(null), Deadline::treatmentDay)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(
                                Deadline.Kind.CERTIFICATION, LocalDate.of(2026, 2, 4), OptionalInt.empty()),
                        org.assertj.core.groups.Tuple.tuple(
                                Deadline.Kind.RECERTIFICATION, LocalDate.of(2026, 4, 5), OptionalInt.empty()),
                        org.assertj.core.groups.Tuple.tuple(Deadline.Kind.PROGRESS_REPORT, null, OptionalInt.of(10)));
        assertThat(all.get(1).text()).contains("2026-04-04 if the first day counts too");
    }

    @Test
    void sendingIsEnoughOnlyWithAnOrderAndOnlySince2025() {
        Optional<LocalDate> sent = Optional.of(FIRST.plusDays(30));
        assertThat(certification(RULE, sentTrail(true, sent), FIRST.plusDays(40)))
                .isEqualTo(Deadline.State.DONE);
        assertThat(certification(RULE, sentTrail(true, sent.map(day -> day.plusDays(1))), FIRST.plusDays(40)))
                .isEqualTo(Deadline.State.DONE_LATE);
        assertThat(certification(RULE, sentTrail(false, sent), FIRST.plusDays(30)))
                .isEqualTo(Deadline.State.OPEN);
        assertThat(certification(RULE, sentTrail(false, sent), FIRST.plusDays(31)))
                .isEqualTo(Deadline.State.OVERDUE);
        PaperRule older =
                PaperRule.find("us-part-b", LocalDate.of(2024, 12, 31)).orElseThrow();
        assertThat(certification(older, sentTrail(true, sent), FIRST.plusDays(31)))
                .isEqualTo(Deadline.State.OVERDUE);
    }

    @Test
    void reportsAreDueByTreatmentDayTenThenTwenty() {
        assertThat(report(trail(9, true), FIRST.plusDays(90)).state()).isEqualTo(Deadline.State.OPEN);
        Deadline tenth = report(trail(10, true), FIRST.plusDays(27));
        assertThat(tenth.due()).contains(FIRST.plusDays(27));
        assertThat(tenth.state()).isEqualTo(Deadline.State.OPEN);
        assertThat(report(trail(11, true), FIRST.plusDays(30)).state()).isEqualTo(Deadline.State.OVERDUE);
        Deadline second = report(trail(12, true, FIRST.plusDays(27)), FIRST.plusDays(40));
        assertThat(second.treatmentDay()).hasValue(20);
        assertThat(second.state()).isEqualTo(Deadline.State.OPEN);
    }

    @Test
    void recertificationCountsFromTheLastOneAndFromThePlansEnd() {
        var plan = new PaperTrail(
                List.of(FIRST),
                true,
                Optional.empty(),
                Optional.of(FIRST.plusDays(5)),
                List.of(FIRST.plusDays(80)),
                Optional.of(FIRST.plusDays(120)),
                List.of());
        assertThat(Deadlines.of(RULE, plan, FIRST).get(1).due()).contains(FIRST.plusDays(120));
        var longer = new PaperTrail(
                List.of(FIRST),
                true,
                Optional.empty(),
                Optional.of(FIRST.plusDays(5)),
                List.of(FIRST.plusDays(80)),
                Optional.of(FIRST.plusDays(56)),
                List.of());
        assertThat(Deadlines.of(RULE, longer, FIRST).get(1).due()).contains(FIRST.plusDays(170));
    }

    /** A week and two visits ahead are common practice (paper-warnings.csv); the dates are those of the worked example. */
    @Test
    void aWarningComesAWeekOrTwoVisitsAheadAndStaysWhenItIsOver() {
        assertThat(warned(trail(1, true), FIRST.plusDays(22))).isEmpty();
        assertThat(warned(trail(1, true), LocalDate.of(2026, 1, 28))).containsExactly(Deadline.Kind.CERTIFICATION);
        assertThat(warned(trail(1, true), LocalDate.of(2026, 2, 5))).containsExactly(Deadline.Kind.CERTIFICATION);
        assertThat(warned(trail(1, true), LocalDate.of(2026, 3, 29)))
                .containsExactly(Deadline.Kind.CERTIFICATION, Deadline.Kind.RECERTIFICATION);
        assertThat(warned(trail(7, true), FIRST.plusDays(20))).isEmpty();
        assertThat(warned(trail(8, true), FIRST.plusDays(21))).containsExactly(Deadline.Kind.PROGRESS_REPORT);
    }

    private static List<Deadline.Kind> warned(PaperTrail trail, LocalDate asOf) {
        List<Deadline> all = Deadlines.of(RULE, trail, asOf);
        return PaperWarnings.of(all, trail.treatmentDays().size(), asOf).stream()
                .map(Deadline::kind)
                .toList();
    }

    @Test
    void withoutAPayerNothingIsDue() {
        assertThat(Deadlines.of(PaperRule.find("none", FIRST).orElseThrow(), trail(12, false), FIRST.plusDays(365)))
                .isEmpty();
        assertThat(PaperRule.find("nobody", FIRST)).isEmpty();
    }

    private static Deadline.State certification(PaperRule rule, PaperTrail trail, LocalDate asOf) {
        return Deadlines.of(rule, trail, asOf).get(0).state();
    }

    private static Deadline report(PaperTrail trail, LocalDate asOf) {
        return Deadlines.of(RULE, trail, asOf).get(2);
    }

    private static PaperTrail sentTrail(boolean order, Optional<LocalDate> sent) {
        return new PaperTrail(List.of(FIRST), order, sent, Optional.empty(), List.of(), Optional.empty(), List.of());
    }

    /** Treatment every third day. */
    private static PaperTrail trail(int treatments, boolean order, LocalDate... reports) {
        var days = new ArrayList<LocalDate>();
        for (int i = 0; i < treatments; i++) {
            days.add(FIRST.plusDays(3L * i));
        }
        return new PaperTrail(
                days, order, Optional.empty(), Optional.empty(), List.of(), Optional.empty(), List.of(reports));
    }
}
