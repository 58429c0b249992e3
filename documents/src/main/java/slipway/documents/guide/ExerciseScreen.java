package slipway.documents.guide;

import java.util.ArrayList;
import java.util.List;
import slipway.documents.sheet.Dose;
import slipway.documents.sheet.DoseLines;
import slipway.documents.sheet.SheetExercise;

/** One exercise: the figure with its count, and below it what the sheet says. */
final class ExerciseScreen {
    private final GuideExercise exercise;
    private final SheetExercise text;
    private final GuideTexts texts;
    private final int number;
    private final int of;

    ExerciseScreen(GuideExercise exercise, GuideTexts texts, int index, int of) {
        this.exercise = exercise;
        this.text = exercise.text();
        this.texts = texts;
        this.number = index + 1;
        this.of = of;
    }

    void addTo(Html html) {
        String id = "exercise-" + number;
        html.open("section", "id", id, "data-screen", "exercise", "aria-labelledby", id + "-title");
        html.open("p", "class", "where")
                .open("a", "href", "#home")
                .text(texts.own().get("exercise.all"))
                .close();
        html.line("span", texts.own().get("exercise.of", number, of), "class", "of")
                .close();
        html.line("h2", text.name(), "id", id + "-title", "tabindex", "-1");
        html.line("p", String.join(" ", movesAndNeeds()), "class", "moves");
        stage(html);
        pace(html);
        html.open("div", "class", "words");
        words(html);
        html.close();
        html.close();
    }

    private List<String> movesAndNeeds() {
        var sentences = new ArrayList<String>();
        text.moves().ifPresent(part -> sentences.add(texts.sheet().get("moves." + part.key()) + "."));
        if (!text.props().isEmpty()) {
            sentences.add(texts.sheet().get("exercise.need") + " " + String.join(", ", text.props()) + ".");
        }
        return sentences;
    }

    private void stage(Html html) {
        html.open("div", "class", "stage");
        html.open("figure", "class", "start").written(exercise.figure().start());
        html.line("figcaption", texts.sheet().get("exercise.start")).close();
        html.open("figure", "class", "end").written(exercise.end());
        html.line("figcaption", texts.sheet().get("exercise.end")).close();
        html.close();
    }

    /** Filled by the script. */
    private void pace(Html html) {
        html.open("div", "class", "live pace");
        html.open("div", "class", "way", "aria-hidden", "true")
                .open("div", "class", "done")
                .close()
                .close();
        html.open("p", "class", "count", "role", "status").close();
        html.open("p", "class", "cue").close();
        html.close();
    }

    private void words(Html html) {
        html.line("h3", texts.sheet().get("exercise.steps"));
        html.list("ol", text.steps(), "class", "steps");
        html.open("div", "class", "pair");
        dose(html, "exercise.dose", exercise.usualDose(), "");
        dose(html, "exercise.easier", exercise.easierDose(), text.doses().easierHint());
        html.close();
        html.open("div", "class", "pair");
        feelings(html, "feel.heading", text.feelings().mayFeel(), "box");
        feelings(html, "stop.heading", text.feelings().stopIf(), "box warn");
        html.close();
        for (String caution : text.cautions()) {
            html.open("p", "class", "care").line("b", texts.sheet().get("exercise.caution") + ": ");
            html.text(caution).close();
        }
    }

    private void dose(Html html, String heading, Dose dose, String hint) {
        html.open("div", "class", "box dose").line("h3", texts.sheet().get(heading));
        List<String> lines = DoseLines.of(dose, texts.sheet());
        html.line("p", lines.get(0), "class", "much");
        lines.stream().skip(1).forEach(line -> html.line("p", line));
        if (!hint.isEmpty()) {
            html.line("p", hint);
            html.open("button", "type", "button", "data-option", "easier", "aria-pressed", "false", "class", "live");
            html.text(texts.own().get("options.easier.today")).close();
        }
        html.close();
    }

    private void feelings(Html html, String heading, List<String> lines, String style) {
        html.open("div", "class", style).line("h3", texts.own().get(heading));
        html.list("ul", lines);
        html.close();
    }
}
