package slipway.web.episode;

import java.util.List;
import org.springframework.ui.Model;
import slipway.care.record.chart.Chart;
import slipway.documents.words.Words;
import slipway.exercises.yaml.Mistake;
import slipway.web.form.FormView;
import tools.jackson.databind.node.ObjectNode;

/**
 * What one step shows. The template of a step is {@code episode/<key>.jte}; it gets {@code page}, {@code head}, {@code t}
 * (the words of the step), {@code form} and {@code version} (of the section that it edits), and what it adds itself.
 */
public interface StepPage {
    Step step();

    Words words();

    /** Adds what this step shows beyond its form. */
    default void fill(Chart chart, FormView form, Model model) {}

    /** Content that a form of this step sent, before it is checked: a place to put what the form cannot say by itself. */
    default ObjectNode adjust(Chart chart, ObjectNode sent) {
        return sent;
    }

    /** What is wrong beyond the rules of case files. */
    default List<Mistake> check(Chart chart, ObjectNode sent) {
        return List.of();
    }

    /** What follows from the section that was just saved. */
    default void saved(Chart chart) {}
}
