package slipway.web.told;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import slipway.exercises.exercise.Language;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** From answers to fields of the case, by path. Only what was answered; "I do not know" stays that. */
final class Sayings {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final double DAYS_A_WEEK = 7;
    private static final double DAYS_A_YEAR = 365.25;
    private static final double MONTHS_A_YEAR = 12;
    /** Of what makes it worse, what the record knows as a habit that presses on the nerve; the same names in both. */
    private static final List<String> HABITS =
            List.of("sitting", "standing", "driving", "lifting", "kneeling", "squatting", "crossed-legs");

    private final Answers answers;
    private final Map<String, Said> said = new LinkedHashMap<>();

    private Sayings(Answers answers) {
        this.answers = answers;
    }

    /** By path in the case, for example {@code history.onset}. */
    static Map<String, Said> of(Answers answers) {
        var sayings = new Sayings(answers);
        sayings.screening();
        sayings.story();
        sayings.background();
        sayings.irritability();
        return sayings.said;
    }

    private void screening() {
        for (Question question : Questions.all()) {
            if (question.kind() == Question.Kind.DANGER) {
                yesNoUnknown("screening." + question.id(), question.id());
            }
        }
        yesNoUnknown("screening.nightPain", "nightPain");
        List<String> ticked = answers.list("have");
        String rest = answers.text("others");
        for (String id : question("have").values()) {
            String value = ticked.contains(id) ? Question.YES : rest;
            if (!value.isEmpty()) {
                put("screening." + id, value, value.equals(Question.UNKNOWN) ? "not sure" : value);
            }
        }
    }

    private void story() {
        text("history.onset", parts(label("began", ""), answers.text("beganText")));
        weeks().ifPresent(weeks -> said.put(
                "history.durationWeeks",
                new Said(
                        answers.text("sinceCount") + " " + label("sinceUnit", ""),
                        weeks == Math.rint(weeks) ? JSON.numberNode((long) weeks) : JSON.numberNode(weeks))));
        text(
                "history.aggravating",
                parts(
                        label("worse", ""),
                        label("startsMinutes", "starts after: "),
                        label("trifles", "small things set it off: "),
                        answers.text("worseText")));
        text(
                "history.easing",
                parts(label("better", ""), label("settleMinutes", "settles after: "), answers.text("betterText")));
        text(
                "history.dayPattern",
                parts(label("worstTime", "worst: "), label("nightPain", "wakes and stays in any position: ")));
        List<String> habits =
                answers.list("worse").stream().filter(HABITS::contains).toList();
        if (!habits.isEmpty()) {
            ArrayNode list = JSON.arrayNode();
            habits.forEach(list::add);
            said.put("history.habits", new Said(String.join(", ", habits).replace('-', ' '), list));
        }
    }

    private void background() {
        text("history.work", answers.text("work"));
        text("history.drugs", answers.text("drugs"));
        text("history.pastCare", answers.text("care"));
        text("history.imaging", answers.text("scans"));
        text("history.beliefs", answers.text("worry"));
        text("history.goals", parts(answers.text("goal"), prefixed("sport or hobby: ", answers.text("activity"))));
        text("history.notes", parts(label("where", "felt at: "), label("feel", "feels: "), answers.text("more")));
        String floor = answers.text("floor");
        if (!floor.isEmpty() && !floor.equals(Question.UNKNOWN)) {
            put("abilities.canLieOnFloor", floor, floor);
        }
    }

    private void irritability() {
        number("irritability.usualPain", "usualPain", "");
        number("irritability.worstPain", "worstPain", "");
        number("irritability.restPain", "restPain", "");
        number("irritability.nightPain", "nightPainLevel", "");
        number("irritability.settleMinutes", "settleMinutes", label("settleMinutes", ""));
        String trifles = answers.text("trifles");
        if (!trifles.isEmpty() && !trifles.equals(Question.UNKNOWN)) {
            put("irritability.provokedByTrivialActivity", trifles, trifles);
        }
    }

    /** Weeks since it began, to one decimal. */
    private OptionalDouble weeks() {
        String count = answers.text("sinceCount").replace(',', '.');
        if (!count.matches("[0-9]{1,4}([.][0-9]{1,2})?")) {
            return OptionalDouble.empty();
        }
        double weeks = Double.parseDouble(count)
                * switch (answers.text("sinceUnit")) {
                    case "days" -> 1 / DAYS_A_WEEK;
                    case "weeks" -> 1;
                    case "months" -> DAYS_A_YEAR / MONTHS_A_YEAR / DAYS_A_WEEK;
                    case "years" -> DAYS_A_YEAR / DAYS_A_WEEK;
                    default -> Double.NaN;
                };
        return Double.isNaN(weeks) ? OptionalDouble.empty() : OptionalDouble.of(Math.round(weeks * 10) / 10.0);
    }

    private void yesNoUnknown(String path, String id) {
        String answer = answers.text(id);
        if (!answer.isEmpty()) {
            put(path, answer, answer.equals(Question.UNKNOWN) ? "does not know" : answer);
        }
    }

    private void number(String path, String id, String words) {
        String answer = answers.text(id);
        if (answer.matches("[0-9]{1,4}")) {
            said.put(path, new Said(words.isEmpty() ? answer : words, JSON.numberNode(Long.parseLong(answer))));
        }
    }

    private void put(String path, String value, String words) {
        said.put(path, new Said(words, JSON.stringNode(value)));
    }

    private void text(String path, String words) {
        if (!words.isEmpty()) {
            put(path, words, words);
        }
    }

    private static Question question(String id) {
        return Questions.find(id).orElseThrow();
    }

    /** What was tapped, in English, behind a word that says what it is; empty if nothing was. */
    private String label(String id, String before) {
        return prefixed(before, answers.said(question(id), Language.EN).toLowerCase(Locale.ROOT));
    }

    private static String prefixed(String before, String words) {
        return words.isEmpty() ? "" : before + words;
    }

    private static String parts(String... parts) {
        var given = new ArrayList<String>();
        for (String part : parts) {
            Optional.of(part.strip()).filter(each -> !each.isEmpty()).ifPresent(given::add);
        }
        return String.join("; ", given);
    }
}
