package slipway.web.people;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import slipway.care.record.person.PersonDetails;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;

/**
 * What a fuzzer calls (Jazzer finds the method by its name): the lines that go in are the fields of the form; details that
 * can be kept come out, or what is wrong.
 */
public final class PersonFormFuzzer {
    private static final Words WORDS = Words.beside(PeopleController.class, Language.EN);
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
    private static final int FIELDS = 9;

    private PersonFormFuzzer() {}

    public static void fuzzerTestOneInput(byte[] data) {
        String[] typed = new String(data, StandardCharsets.UTF_8).split("\n", FIELDS);
        var at = new String[FIELDS];
        for (int field = 0; field < FIELDS; field++) {
            at[field] = field < typed.length ? typed[field] : "";
        }
        for (Units units : Units.values()) {
            var form = new PersonForm(at[0], at[1], at[2], at[3], at[4], at[5], at[6], at[7], at[8]);
            PersonForm.Reading read = form.read(units, WORDS, TODAY, true);
            if (read.details().isPresent() != read.mistakes().isEmpty()) {
                throw new IllegalStateException("neither details nor a mistake, or both");
            }
            read.details().ifPresent(PersonFormFuzzer::check);
        }
    }

    private static void check(PersonDetails details) {
        details.age().ifPresent(age -> {
            double years = age.yearsOn(TODAY);
            if (!(years >= 0 && years <= 130)) {
                throw new IllegalStateException("an age of " + years);
            }
        });
        // What was taken is shown again and means the same.
        PersonForm shown = PersonForm.of(details, Units.METRIC);
        if (shown.read(Units.METRIC, WORDS, TODAY, true).details().isEmpty()) {
            throw new IllegalStateException("what was taken cannot be taken again: " + shown);
        }
    }
}
