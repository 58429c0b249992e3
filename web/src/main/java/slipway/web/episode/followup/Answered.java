package slipway.web.episode.followup;

import java.util.List;
import java.util.Optional;
import slipway.care.record.follow.CheckIn;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Language;
import slipway.reasoning.basis.Reason;
import slipway.reasoning.response.propose.NextDose;
import slipway.reasoning.response.propose.RespondResult;
import slipway.reasoning.response.rules.RuleBook;
import slipway.web.shell.Times;
import tools.jackson.databind.JsonNode;

/**
 * A report and what was answered.
 *
 * @param told what the person reported, in words
 * @param decision empty if the report is on another plan
 * @param reads what the person read
 * @param chance of a flare beyond rest in the week after, in percent
 */
public record Answered(
        String when,
        String exercise,
        String told,
        Optional<String> decision,
        String reads,
        String next,
        String chance,
        List<Reason> reasons) {
    static Answered of(CheckIn report, Optional<RespondResult> result) {
        JsonNode body = report.body();
        return new Answered(
                Times.minute(report.receivedAt()),
                name(report.exerciseId()),
                told(body),
                result.map(each -> each.decision().key()),
                result.map(each -> RuleBook.bundled().spoken(each.rules()).en()).orElse(""),
                result.flatMap(RespondResult::nextDose).map(Answered::dose).orElse(""),
                result.flatMap(RespondResult::excessFlareChance)
                        .map(chance -> "%.0f %% (%.0f to %.0f)"
                                .formatted(100 * chance.median(), 100 * chance.low(), 100 * chance.high()))
                        .orElse(""),
                result.map(RespondResult::reasons).orElse(List.of()));
    }

    private static String told(JsonNode body) {
        String worst = body.path("worst").asString("");
        String settle = body.path("settle_minutes").asString("");
        return (worst.isEmpty()
                        ? ""
                        : "worst " + worst + " of 10, " + body.path("kind").asString(""))
                + (settle.isEmpty() ? "" : "; settled: " + settle + " min")
                + (body.path("new_weakness").asString("").equals("yes") ? "; NEW WEAKNESS" : "")
                + (body.path("still_numb").asString("").equals("yes") ? "; still numb" : "")
                + (body.path("emergency").asString("").equals("no") ? "" : "; EMERGENCY SIGN");
    }

    private static String dose(NextDose next) {
        return name(next.exercise()) + ": " + next.dose().words();
    }

    static String name(String exerciseId) {
        return Catalogue.bundled()
                .find(exerciseId)
                .map(exercise -> exercise.name().in(Language.EN))
                .orElse(exerciseId);
    }
}
