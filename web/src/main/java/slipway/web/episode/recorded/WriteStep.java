package slipway.web.episode.recorded;

import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import slipway.care.record.chart.Chart;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.episode.Step;
import slipway.web.episode.StepPage;
import slipway.web.form.FormView;

/** What is recorded so far under write. */
@Component
class WriteStep implements StepPage {
    private static final Words WORDS = Words.beside(WriteStep.class, Language.EN);

    @Override
    public Step step() {
        return Step.WRITE;
    }

    @Override
    public Words words() {
        return WORDS;
    }

    @Override
    public void fill(Chart chart, FormView form, Model model) {
        model.addAttribute("rows", RecordedRow.papers(chart));
    }
}
