package slipway.care.record.person;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import slipway.exercises.exercise.Language;

/**
 * What is kept of a person. Only a name and a language must be there; what a plan needs beyond that (age and stature) is
 * asked for when the case is put together.
 *
 * @param name 1 to 80 characters as the person writes it, any script, no control characters
 * @param sex {@code female}, {@code male} or {@code other}
 * @param statureCm body height in cm, 100 to 230
 * @param massKg body mass in kg, 20 to 350
 * @param language what the person gets to read in
 * @param invented whether the person is made up, as in the demo
 */
public record PersonDetails(
        String name,
        Optional<Age> age,
        Optional<String> sex,
        OptionalDouble statureCm,
        OptionalDouble massKg,
        Language language,
        Optional<String> phone,
        Optional<String> email,
        boolean invented) {
    /** Longest name, as in the case file. */
    public static final int MAX_NAME = 80;

    private static final Pattern CONTROL = Pattern.compile("\\p{Cc}");

    public PersonDetails {
        // The messages carry no name: they may end in a log.
        if (name.isBlank() || name.length() > MAX_NAME || CONTROL.matcher(name).find()) {
            throw new IllegalArgumentException("name must have 1 to %d characters without control characters, had %d"
                    .formatted(MAX_NAME, name.length()));
        }
        sex.ifPresent(word -> {
            if (!word.equals("female") && !word.equals("male") && !word.equals("other")) {
                throw new IllegalArgumentException("sex must be female, male or other");
            }
        });
        within("stature", statureCm, 100, 230, "cm");
        within("mass", massKg, 20, 350, "kg");
        shorter("phone", phone, 40);
        shorter("e-mail", email, 254);
    }

    /** An invented person of whom nothing but the name is known. */
    public static PersonDetails invented(String name) {
        return new PersonDetails(
                name,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Language.EN,
                Optional.empty(),
                Optional.empty(),
                true);
    }

    /** Says nothing of the person: this may end in a log. */
    @Override
    public String toString() {
        return "details of a person";
    }

    private static void within(String what, OptionalDouble value, double low, double high, String unit) {
        if (value.isPresent() && !(value.getAsDouble() >= low && value.getAsDouble() <= high)) {
            throw new IllegalArgumentException("%s must be within %.0f and %.0f %s".formatted(what, low, high, unit));
        }
    }

    private static void shorter(String what, Optional<String> value, int most) {
        if (value.filter(text -> text.isBlank() || text.length() > most).isPresent()) {
            throw new IllegalArgumentException("%s must have 1 to %d characters".formatted(what, most));
        }
    }
}
