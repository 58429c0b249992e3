package slipway.web.episode.measure;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.reasoning.course.GoalCheck;

/**
 * What a fuzzer calls (Jazzer finds the method by its name): the lines that go in are the fields of the forms of a score
 * and of a goal; what can be kept comes out, or what is wrong.
 */
public final class MeasureFormsFuzzer {
    private static final Words WORDS = Words.beside(MeasureController.class, Language.EN);
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
    private static final int FIELDS = 7;

    private MeasureFormsFuzzer() {}

    public static void fuzzerTestOneInput(byte[] data) {
        String[] typed = new String(data, StandardCharsets.UTF_8).split("\n", FIELDS);
        var at = new String[FIELDS];
        for (int field = 0; field < FIELDS; field++) {
            at[field] = field < typed.length ? typed[field] : "";
        }
        ScoreForm.Reading score = new ScoreForm(at[0], at[1], at[2], at[3]).read(TODAY, WORDS);
        if (score.mistakes().isEmpty() && (score.day().isEmpty() || score.body().isEmpty())) {
            throw new IllegalStateException("nothing is wrong and nothing was read");
        }
        score.day().filter(day -> day.isAfter(TODAY)).ifPresent(day -> {
            throw new IllegalStateException("a score of " + day + " was taken on " + TODAY);
        });
        var form = new GoalForm(at[4], at[5], at[6], at[0], at[2], at[3], at[1]);
        GoalCheck.Verdict goal = GoalCheck.of(form.draft("new"), TODAY);
        if (goal.goal().isEmpty() && goal.flaws().isEmpty()) {
            throw new IllegalStateException("no goal and no reason");
        }
        goal.goal().ifPresent(kept -> form.kept());
    }
}
