package slipway.documents.sheet;

import java.util.ArrayList;
import java.util.List;
import slipway.documents.pdf.Tag;
import slipway.documents.words.Words;

/** One exercise: name, pictures, steps, doses, what is fine and what is not. */
final class ExerciseSection {
    private final SheetExercise exercise;
    private final Words words;

    ExerciseSection(SheetExercise exercise, Words words) {
        this.exercise = exercise;
        this.words = words;
    }

    static String id(int index) {
        return "exercise-" + (index + 1);
    }

    void addTo(Tag body, int index, PictureLayout layout) {
        Tag section = body.add("section", "exercise").attribute("id", id(index));
        Tag heading = section.add("h2", "word");
        heading.line("span", "number", (index + 1) + ". ");
        heading.text(exercise.name());
        section.line("p", "moves", movesAndNeeds());
        if (layout.beside()) {
            Tag columns = section.add("div", "row");
            Tag left = columns.add("div", "cell");
            figures(left, layout);
            steps(left.add("div", "steps"));
            columns.add("div", "gap");
            doses(columns.add("div", "cell side"), "");
        } else {
            figures(section, layout);
            steps(section.add("div", "steps"));
            doses(section.add("div", "row pair"), "cell ");
        }
        feelings(section.add("div", "row feelings"));
        cautions(section);
    }

    private String movesAndNeeds() {
        var sentences = new ArrayList<String>();
        exercise.moves().ifPresent(part -> sentences.add(words.get("moves." + part.key()) + "."));
        if (!exercise.props().isEmpty()) {
            sentences.add(words.get("exercise.need") + " " + String.join(", ", exercise.props()) + ".");
        }
        return String.join(" ", sentences);
    }

    private void figures(Tag parent, PictureLayout layout) {
        SheetExercise.Pictures pictures = exercise.pictures();
        Tag row = parent.add("div", "row figures");
        row.add("div", "cell figure")
                .picture(pictures.start(), pictures.startShows(), layout.widthMm(), layout.heightMm())
                .line("p", "", words.get("exercise.start"));
        row.add("div", "gap narrow");
        row.add("div", "cell figure")
                .picture(pictures.end(), pictures.endShows(), layout.widthMm(), layout.heightMm())
                .line("p", "", "→ " + pictures.movement());
    }

    private void steps(Tag box) {
        box.line("h3", "", words.get("exercise.steps"));
        SheetLayout.list(box, "ol", exercise.steps());
    }

    private void doses(Tag parent, String cell) {
        SheetExercise.Doses doses = exercise.doses();
        dose(parent.add("div", cell + "dose"), "exercise.dose", doses.usual());
        parent.add("div", cell.isEmpty() ? "space" : "gap");
        Tag easier = parent.add("div", cell + "dose easier");
        dose(easier, "exercise.easier", doses.easier());
        if (!doses.easierHint().isEmpty()) {
            easier.line("p", "", doses.easierHint());
        }
    }

    private void dose(Tag box, String headingKey, Dose dose) {
        box.line("h3", "", words.get(headingKey));
        List<String> lines = DoseLines.of(dose, words);
        box.line("p", "much", lines.get(0));
        lines.stream().skip(1).forEach(line -> box.line("p", "", line));
    }

    private void feelings(Tag box) {
        Tag feel = box.add("div", "cell feel");
        feel.line("h3", "", words.get("exercise.feel"));
        SheetLayout.list(feel, "ul", exercise.feelings().mayFeel());
        box.add("div", "gap");
        Tag stop = box.add("div", "cell stop");
        stop.line("h3", "", words.get("exercise.stop"));
        SheetLayout.list(stop, "ul", exercise.feelings().stopIf());
    }

    private void cautions(Tag section) {
        for (String caution : exercise.cautions()) {
            Tag line = section.add("p", "care");
            line.line("b", "", words.get("exercise.caution") + ": ").text(caution);
        }
    }
}
