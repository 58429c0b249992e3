package slipway.web.people;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import slipway.care.record.person.Age;
import slipway.care.record.person.PersonDetails;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.exercises.yaml.Mistake;
import slipway.web.form.FormReader;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * The form of a person's details: text fields, read into details with all mistakes at once.
 *
 * @param born year-month-day; blank if only an age is known
 * @param ageYears used where {@code born} is blank
 * @param stature in the unit that is shown
 * @param mass in the unit that is shown
 */
record PersonForm(
        String name,
        String born,
        String ageYears,
        String sex,
        String stature,
        String mass,
        String language,
        String phone,
        String email) {
    PersonForm {
        name = FormReader.text(name);
        born = FormReader.text(born);
        ageYears = FormReader.text(ageYears);
        sex = FormReader.text(sex);
        stature = FormReader.text(stature);
        mass = FormReader.text(mass);
        language = FormReader.text(language);
        phone = FormReader.text(phone);
        email = FormReader.text(email);
    }

    private static final int OLDEST = 130;

    /** What came of reading the form: details, or everything that is wrong with it. */
    record Reading(Optional<PersonDetails> details, List<Mistake> mistakes) {}

    /** Values of the fields by name, for the page. */
    ObjectNode fields() {
        ObjectNode fields = JsonMapper.shared().createObjectNode();
        fields.put("name", name)
                .put("born", born)
                .put("ageYears", ageYears)
                .put("sex", sex)
                .put("stature", stature)
                .put("mass", mass)
                .put("language", language)
                .put("phone", phone)
                .put("email", email);
        return fields;
    }

    static PersonForm of(PersonDetails details, Units units) {
        @Nullable Age age = details.age().orElse(null);
        return new PersonForm(
                details.name(),
                age instanceof Age.Born known ? known.on().toString() : "",
                age instanceof Age.Told told ? Units.plain(told.years()) : "",
                details.sex().orElse(""),
                details.statureCm().isPresent()
                        ? units.showStature(details.statureCm().getAsDouble())
                        : "",
                details.massKg().isPresent() ? units.showMass(details.massKg().getAsDouble()) : "",
                details.language().code(),
                details.phone().orElse(""),
                details.email().orElse(""));
    }

    Reading read(Units units, Words words, LocalDate today, boolean invented) {
        var mistakes = new ArrayList<Mistake>();
        Optional<Age> age = age(words, today, mistakes);
        OptionalDouble statureCm = number("stature", stature, words, mistakes);
        OptionalDouble massKg = number("mass", mass, words, mistakes);
        statureCm = within("stature", units.statureCm(statureCm), 100, 230, words.get("wrong.stature"), mistakes);
        massKg = within("mass", units.massKg(massKg), 20, 350, words.get("wrong.mass"), mistakes);
        if (name.isBlank()) {
            mistakes.add(mistake("name", words.get("wrong.name.blank")));
        } else if (name.strip().length() > PersonDetails.MAX_NAME) {
            mistakes.add(mistake(
                    "name",
                    words.get(
                            "wrong.name.long",
                            PersonDetails.MAX_NAME,
                            name.strip().length())));
        } else if (name.codePoints().anyMatch(Character::isISOControl)) {
            mistakes.add(mistake("name", words.get("wrong.name.control")));
        }
        Optional<Language> reads = Language.find(language);
        if (reads.isEmpty()) {
            mistakes.add(mistake("language", words.get("wrong.language")));
        }
        if (!sex.isEmpty() && !List.of("female", "male", "other").contains(sex)) {
            mistakes.add(mistake("sex", words.get("wrong.sex")));
        }
        if (!phone.isBlank() && !phone.strip().matches("[0-9+() .-]{3,30}")) {
            mistakes.add(mistake("phone", words.get("wrong.phone")));
        }
        if (!email.isBlank() && !email.strip().matches("[^\\s@]{1,64}@[^\\s@]{1,180}")) {
            mistakes.add(mistake("email", words.get("wrong.email")));
        }
        if (!mistakes.isEmpty()) {
            return new Reading(Optional.empty(), mistakes);
        }
        return new Reading(
                Optional.of(new PersonDetails(
                        name.strip(),
                        age,
                        given(sex),
                        statureCm,
                        massKg,
                        reads.orElseThrow(),
                        given(phone),
                        given(email),
                        invented)),
                List.of());
    }

    private Optional<Age> age(Words words, LocalDate today, List<Mistake> mistakes) {
        if (born.isBlank()) {
            OptionalDouble years = number("ageYears", ageYears, words, mistakes);
            if (years.isPresent() && !(years.getAsDouble() >= 0 && years.getAsDouble() <= OLDEST)) {
                mistakes.add(mistake("ageYears", words.get("wrong.age", ageYears)));
                return Optional.empty();
            }
            return years.isPresent() ? Optional.of(new Age.Told(years.getAsDouble(), today)) : Optional.empty();
        }
        try {
            LocalDate day = LocalDate.parse(born.strip());
            if (day.isAfter(today) || day.isBefore(today.minusYears(OLDEST))) {
                mistakes.add(mistake("born", words.get("wrong.born.range", born)));
                return Optional.empty();
            }
            return Optional.of(new Age.Born(day));
        } catch (DateTimeParseException e) {
            mistakes.add(mistake("born", words.get("wrong.born", born)));
            return Optional.empty();
        }
    }

    private static OptionalDouble number(String field, String text, Words words, List<Mistake> mistakes) {
        if (text.isBlank()) {
            return OptionalDouble.empty();
        }
        try {
            double value = Double.parseDouble(text.strip().replace(',', '.'));
            if (Double.isFinite(value)) {
                return OptionalDouble.of(value);
            }
        } catch (NumberFormatException e) {
            // Said below, the same as for what is not finite.
        }
        mistakes.add(mistake(field, words.get("wrong.number", text)));
        return OptionalDouble.empty();
    }

    private static OptionalDouble within(
            String field, OptionalDouble value, double low, double high, String message, List<Mistake> mistakes) {
        if (value.isPresent() && !(value.getAsDouble() >= low && value.getAsDouble() <= high)) {
            mistakes.add(mistake(field, message));
            return OptionalDouble.empty();
        }
        return value;
    }

    private static Mistake mistake(String field, String message) {
        return new Mistake(0, 0, field, message);
    }

    private static Optional<String> given(String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(text.strip());
    }

    /** Today where the server stands. */
    static LocalDate today(java.time.Clock clock) {
        return LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault());
    }
}
