package slipway.care.casefile;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipway.reasoning.screening.Answer;
import slipway.reasoning.screening.Clearance;
import slipway.reasoning.screening.Wells;

/**
 * The answers to the safety questions.
 *
 * @param answers by id of the screening rule; every emergency and urgent question is there
 * @param clearances rules that a clinician looked into and released
 * @param wells answers to the thrombosis score, if it was looked at
 */
public record Safety(Map<String, Answer> answers, List<Clearance> clearances, Optional<Wells.Answers> wells) {
    public Safety {
        answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
        clearances = List.copyOf(clearances);
    }
}
