package slipway.web.episode.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.reasoning.screening.Level;
import slipway.reasoning.screening.Region;
import slipway.reasoning.screening.Screening;
import slipway.reasoning.screening.ScreeningResult;
import slipway.reasoning.screening.ScreeningRule;
import slipway.reasoning.screening.ScreeningRules;
import slipway.web.episode.Cases;
import slipway.web.episode.Step;
import slipway.web.episode.StepPage;
import slipway.web.form.FormView;
import tools.jackson.databind.node.ObjectNode;

/** The screening. */
@Component
class ScreenStep implements StepPage {
    private static final Words WORDS = Words.beside(ScreenStep.class, Language.EN);
    private static final String CLEARANCES = "clearances";

    private final Cases cases;

    ScreenStep(Cases cases) {
        this.cases = cases;
    }

    @Override
    public Step step() {
        return Step.SCREEN;
    }

    @Override
    public Words words() {
        return WORDS;
    }

    /** Clearances are recorded by themselves, so a form that knows nothing of them does not drop them. */
    @Override
    public ObjectNode adjust(Chart chart, ObjectNode sent) {
        ObjectNode kept = chart.section(Section.SCREENING).content();
        if (kept.has(CLEARANCES)) {
            sent.set(CLEARANCES, kept.get(CLEARANCES));
        }
        return sent;
    }

    @Override
    public void fill(Chart chart, FormView form, Model model) {
        ScreeningRules rules = ScreeningRules.load();
        Map<Level, List<ScreeningRule>> groups = new LinkedHashMap<>();
        for (ScreeningRule rule : rules.listQuestions(Region.LEG)) {
            groups.computeIfAbsent(rule.level(), level -> new ArrayList<>()).add(rule);
        }
        model.addAttribute("groups", groups);
        model.addAttribute("wells", rules.wells().items());
        model.addAttribute("wellsOpen", form.content().has("wells"));
        model.addAttribute("result", result(chart));
        model.addAttribute("answered", !chart.section(Section.SCREENING).isEmpty());
        model.addAttribute("caution", rules.caution().en());
        model.addAttribute("absence", rules.absence().en());
    }

    /** The screening of what is recorded so far. */
    private ScreeningResult result(Chart chart) {
        return Screening.load().evaluate(cases.screeningInput(chart));
    }
}
