package slipway.care.caseload;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.care.facts.Outcomes;
import slipway.care.record.Act;
import slipway.care.record.caseload.Caseload;
import slipway.care.record.caseload.OutcomeAsk;
import slipway.care.record.caseload.OutcomeRow;
import slipway.reasoning.caseload.CaseloadReport;
import slipway.reasoning.caseload.EpisodeFacts;
import slipway.reasoning.course.Stall;

/**
 * The figures of a caseload as they stood at a time.
 *
 * @param at when they were worked out
 * @param measure id of the measure that groups are compared on: the one taken most; empty if nothing was taken twice
 */
public record CaseloadFigures(Instant at, String measure, CaseloadReport report) {
    /** So many episodes are gone through in a moment: their figures are never old. */
    public static final int FEW = 2_000;

    private static final Duration FRESH = Duration.ofMinutes(1);

    private static final int PAGE = 2_000;

    /** The first day from which on episodes count. */
    public static LocalDate from(Instant now, ZoneId zone) {
        return LocalDate.ofInstant(now, zone).minusMonths(CaseloadReport.windowMonths());
    }

    /** The rows of the time that counts, the newest, as they stand now. */
    public static List<OutcomeRow> rows(Caseload caseload, int limit, ZoneId zone, Act act) {
        return caseload.outcomes(ask(limit, zone, act.at()), act);
    }

    private static OutcomeAsk ask(int limit, ZoneId zone, Instant now) {
        return OutcomeAsk.first(
                from(now, zone).atStartOfDay(zone).toInstant(),
                now,
                LocalDate.ofInstant(now, zone).minusDays(Stall.days()),
                limit);
    }

    /** Those that were kept; of a clinic with few episodes those of now. Worked out if none were kept. */
    public static CaseloadFigures current(Caseload caseload, ZoneId zone, Act act) {
        return caseload.figures(act)
                .flatMap(FiguresBody::read)
                .filter(kept -> kept.report().episodes() > FEW || kept.isFresh(act.at()))
                .orElseGet(() -> workOut(caseload, zone, act));
    }

    private boolean isFresh(Instant now) {
        return !now.isBefore(at) && now.isBefore(at.plus(FRESH));
    }

    /** Works out and keeps those of now. Some seconds for a hundred thousand episodes. */
    public static CaseloadFigures workOut(Caseload caseload, ZoneId zone, Act act) {
        List<EpisodeFacts> facts = facts(caseload, zone, act);
        String measure = CaseloadReport.mostTaken(facts);
        var figures = new CaseloadFigures(act.at(), measure, CaseloadReport.of(facts, measure));
        caseload.keep(FiguresBody.of(figures), act);
        return figures;
    }

    private static List<EpisodeFacts> facts(Caseload caseload, ZoneId zone, Act act) {
        var facts = new ArrayList<EpisodeFacts>();
        Optional<OutcomeAsk> ask = Optional.of(ask(PAGE, zone, act.at()));
        while (ask.isPresent()) {
            List<OutcomeRow> rows = caseload.outcomes(ask.get(), act);
            facts.addAll(Outcomes.of(rows, act.at(), zone));
            ask = rows.size() < PAGE ? Optional.empty() : ask.map(page -> page.behind(rows.get(rows.size() - 1)));
        }
        return facts;
    }
}
