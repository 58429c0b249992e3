package slipway.web.episode.history;

import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.chart.Chart;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.episode.Desk;
import slipway.web.episode.Step;
import slipway.web.episode.StepPage;
import slipway.web.form.FormView;
import slipway.web.form.Option;
import slipway.web.told.FirstVisit;

/** The history. */
@Component
class HistoryStep implements StepPage {
    private static final Words WORDS = Words.beside(HistoryStep.class, Language.EN);
    private static final List<String> HABITS = List.of(
            "sitting",
            "crossed-legs",
            "kneeling",
            "squatting",
            "wallet",
            "saddle",
            "belt",
            "footwear",
            "driving",
            "standing",
            "sleep-position",
            "lifting");

    private final Desk desk;

    HistoryStep(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Step step() {
        return Step.HISTORY;
    }

    @Override
    public Words words() {
        return WORDS;
    }

    @Override
    public void fill(Chart chart, FormView form, Model model) {
        model.addAttribute(
                "habits",
                HABITS.stream()
                        .map(habit -> new Option(habit, WORDS.get("habit." + habit)))
                        .toList());
        model.addAttribute(
                "yesNo",
                Stream.of("yes", "no")
                        .map(word -> new Option(word, WORDS.get(word)))
                        .toList());
        model.addAttribute("ahead", FirstVisit.isAhead(chart));
        model.addAttribute("yearKnown", chart.person().details().age().isPresent());
        model.addAttribute("now", desk.clock().instant());
        model.addAttribute(
                "codes",
                desk.records().links().list(chart.episode().id(), desk.act()).stream()
                        .filter(link -> link.purpose() == LinkPurpose.INTAKE)
                        .toList());
    }
}
