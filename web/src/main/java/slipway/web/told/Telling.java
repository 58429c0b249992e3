package slipway.web.told;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.care.record.intake.Intake;
import slipway.exercises.exercise.Language;
import tools.jackson.databind.node.ObjectNode;

/**
 * All that a person told before the first visit. It stands beside the record; nothing of it is a finding before it is
 * taken.
 *
 * @param all what was told, oldest first; never empty
 * @param said what it would say in the record, by path; of the newest that the person was done with, and before that of
 *     the early words
 * @param signs of danger that were told in any of them
 */
public record Telling(List<Intake> all, Map<String, Said> said, List<Sign> signs) {
    public Telling {
        all = List.copyOf(all);
        signs = List.copyOf(signs);
    }

    /** Empty if nothing was told. */
    public static Optional<Telling> of(Chart chart) {
        List<Intake> all = chart.intakes().list();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        var latest = new Answers(newest(all).answers());
        return Optional.of(new Telling(
                all,
                Sayings.of(latest),
                signs(all, latest, chart.section(Section.SCREENING).content())));
    }

    /** The newest that the person was done with, or else the newest early word. */
    private static Intake newest(List<Intake> all) {
        return all.stream()
                .filter(Intake::whole)
                .reduce((first, second) -> second)
                .orElseGet(() -> all.get(all.size() - 1));
    }

    private static List<Sign> signs(List<Intake> all, Answers latest, ObjectNode screening) {
        var first = new LinkedHashMap<Question, Instant>();
        for (Intake each : all) {
            new Answers(each.answers()).signs().forEach(sign -> first.putIfAbsent(sign, each.toldAt()));
        }
        var signs = new ArrayList<Sign>();
        first.forEach((question, at) -> signs.add(new Sign(
                question.id(),
                question.asked(Questions.words(Language.EN)),
                question.emergency(),
                at,
                latest.isAnswered(question.id()) && !latest.has(question.id(), Question.YES),
                screening.path("screening").path(question.id()).asString(""))));
        return signs;
    }

    /** When the newest of it was told. */
    public Instant toldAt() {
        return newest(all).toldAt();
    }

    /** Whether the person said "done". */
    public boolean isWhole() {
        return newest(all).whole();
    }

    /** Signs that nobody has answered in the screening. */
    public List<Sign> openSigns() {
        return signs.stream().filter(Sign::open).toList();
    }

    /** Signs that the screening contradicts. */
    public List<Sign> contradicted() {
        return signs.stream().filter(Sign::contradicted).toList();
    }

    /**
     * One answer as it was told.
     *
     * @param asked the question in English
     * @param said the answer; what the person wrote is in the person's own words
     */
    public record Line(String asked, String said) {}

    /** All answers of one telling, in the order of the questions. */
    public static List<Line> lines(Intake intake) {
        var answers = new Answers(intake.answers());
        return Questions.all().stream()
                .filter(question -> answers.isAnswered(question.id()))
                .map(question ->
                        new Line(question.asked(Questions.words(Language.EN)), answers.said(question, Language.EN)))
                .toList();
    }
}
