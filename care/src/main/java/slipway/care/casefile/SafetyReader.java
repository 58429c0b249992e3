package slipway.care.casefile;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import slipway.reasoning.screening.Answer;
import slipway.reasoning.screening.Clearance;
import slipway.reasoning.screening.Wells;

/** Reads the answers to the safety questions and the clearances. */
final class SafetyReader {
    private SafetyReader() {}

    static Safety read(Fields root, List<Clearance> clearances) {
        Fields wells = root.child("wells");
        Optional<Wells.Answers> score = root.has("wells")
                ? Optional.of(new Wells.Answers(
                        answers(wells, key -> !key.equals("reason")),
                        wells.findText("reason").orElse("")))
                : Optional.empty();
        return new Safety(answers(root.child("screening"), key -> true), clearances, score);
    }

    private static Map<String, Answer> answers(Fields block, Predicate<String> isQuestion) {
        var answers = new LinkedHashMap<String, Answer>();
        block.keys().stream()
                .filter(isQuestion)
                .forEach(key -> Answer.find(block.child(key).written()).ifPresent(answer -> answers.put(key, answer)));
        return answers;
    }

    static List<Clearance> readClearances(Fields root, Report report) {
        var clearances = new ArrayList<Clearance>();
        for (Fields entry : root.list("clearances")) {
            Optional<LocalDate> when = readDate(entry.child("when"), report);
            Optional<String> rule = entry.findText("rule").filter(text -> !text.isBlank());
            Optional<String> who = entry.findText("who").filter(text -> !text.isBlank());
            Optional<String> outcome = entry.findText("outcome").filter(text -> !text.isBlank());
            if (when.isPresent() && rule.isPresent() && who.isPresent() && outcome.isPresent()) {
                clearances.add(new Clearance(rule.get(), who.get(), when.get(), outcome.get()));
            }
        }
        return clearances;
    }

    private static Optional<LocalDate> readDate(Fields at, Report report) {
        Optional<String> text = at.asText();
        try {
            return text.map(LocalDate::parse);
        } catch (DateTimeParseException e) {
            report.add(at, "must be a date as year-month-day, was \"%s\"".formatted(at.written()));
            return Optional.empty();
        }
    }
}
