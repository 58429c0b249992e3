package slipway.web.episode;

import jakarta.servlet.http.HttpServletRequest;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import slipway.care.record.chart.Chart;
import slipway.care.record.draft.Draft;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.form.FormView;
import slipway.web.form.Told;
import slipway.web.shell.Area;
import slipway.web.shell.Pages;
import slipway.web.shell.Times;
import slipway.web.told.Overwriting;
import slipway.web.told.Telling;

/** Shows a step with a form as it stands, whoever asks for it. */
@Component
public class StepViews {
    static final Words TOLD = Words.beside(StepViews.class, Language.EN);

    private final Heads heads;
    private final Pages pages;
    private final Map<Step, StepPage> steps = new EnumMap<>(Step.class);

    StepViews(Heads heads, Pages pages, List<StepPage> all) {
        this.heads = heads;
        this.pages = pages;
        all.forEach(page -> steps.put(page.step(), page));
    }

    /** What a step shows. */
    StepPage page(Step step) {
        return Objects.requireNonNull(steps.get(step), step::key);
    }

    /**
     * The name of the view of a step, with everything that it shows in the model.
     *
     * @param form what its form holds, and what is wrong with it
     * @param version of the section that the form was opened on; 0 if none
     */
    public String show(Step step, Chart chart, FormView form, long version, HttpServletRequest request, Model model) {
        EpisodeHead head = heads.of(chart).with(draft(model));
        StepPage page = page(step);
        model.addAttribute("page", pages.page(request, Area.PEOPLE, head.label(step) + " · " + head.name()));
        model.addAttribute("head", head);
        model.addAttribute("t", page.words());
        Optional<Telling> telling = Telling.of(chart);
        FormView shown = form.with(told(chart, telling));
        model.addAttribute("telling", telling);
        model.addAttribute("form", shown);
        model.addAttribute("version", version);
        page.fill(chart, shown, model);
        return "episode/" + step.key();
    }

    private static Map<String, Told> told(Chart chart, Optional<Telling> telling) {
        var told = new HashMap<String, Told>();
        telling.ifPresent(each -> {
            String by = TOLD.get("told.by", Times.day(each.toldAt()));
            Map<String, String> reasons = Overwriting.reasons(chart);
            each.said()
                    .forEach((path, said) ->
                            told.put(path, new Told(by, said.words(), said.value(), reasons.getOrDefault(path, ""))));
        });
        return told;
    }

    private static Optional<Draft> draft(Model model) {
        return model.getAttribute("draft") instanceof Optional<?> held
                ? held.filter(Draft.class::isInstance).map(Draft.class::cast)
                : Optional.empty();
    }
}
