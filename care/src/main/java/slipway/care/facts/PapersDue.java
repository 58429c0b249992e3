package slipway.care.facts;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slipway.care.record.caseload.PaperTrailRow;
import slipway.reasoning.deadlines.Deadline;
import slipway.reasoning.deadlines.Deadlines;
import slipway.reasoning.deadlines.PaperRule;
import slipway.reasoning.deadlines.PaperTrail;

/** What is due by the terms of the payer. */
public final class PapersDue {
    private PapersDue() {}

    /**
     * What is due, as it stands on a day; empty without a treatment day or without terms.
     *
     * @param treated days of the visits up to that day
     */
    public static List<Deadline> of(Frame frame, List<LocalDate> treated, LocalDate asOf) {
        if (treated.isEmpty()) {
            return List.of();
        }
        var trail = new PaperTrail(
                treated,
                frame.orderedOn().isPresent(),
                frame.days("plan").stream().findFirst(),
                frame.days("certification").stream().findFirst(),
                frame.days("recertification"),
                frame.dosage().ends(),
                frame.days("progress-report"));
        return PaperRule.find(frame.payer(), treated.get(0))
                .map(rule -> Deadlines.of(rule, trail, asOf))
                .orElse(List.of());
    }

    /**
     * What is due of an episode in a list of many.
     *
     * @param zone of the clinic, for the days of visits
     */
    public static List<Deadline> of(PaperTrailRow row, LocalDate asOf, ZoneId zone) {
        Frame frame = new PaperworkReader(row.paperwork()).frame(Optional.empty());
        List<Frame.Sent> letters = Stream.concat(
                        frame.letters().stream(),
                        days(row.reports(), zone).stream()
                                .map(day -> new Frame.Sent("progress-report", day, "", "signed")))
                .toList();
        List<LocalDate> treated = days(row.visits(), zone).stream()
                .filter(day -> !day.isAfter(asOf))
                .toList();
        return of(frame.with(letters), treated, asOf);
    }

    private static List<LocalDate> days(List<Instant> times, ZoneId zone) {
        return times.stream().map(at -> LocalDate.ofInstant(at, zone)).toList();
    }
}
