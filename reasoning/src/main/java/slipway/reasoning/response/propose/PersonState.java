package slipway.reasoning.response.propose;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import slipway.reasoning.response.course.Course;
import slipway.reasoning.response.estimate.FilterState;
import slipway.reasoning.response.rules.Decision;

/**
 * Where a person stands after all reports.
 *
 * @param courses of the exercises that were reported on, by id
 * @param lock the decision that stopped everything and was not released since
 * @param filter the estimate; empty without one
 * @param effectiveParticles how many equally weighted particles the estimate amounts to; 0 without one
 */
public record PersonState(
        Map<String, Course> courses, Optional<Decision> lock, Optional<FilterState> filter, double effectiveParticles) {
    public PersonState {
        courses = Collections.unmodifiableMap(new LinkedHashMap<>(courses));
    }
}
