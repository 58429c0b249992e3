package slipway.reasoning.course;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/** A goal as it is being written; what was not filled in is empty. */
public record GoalDraft(
        String id,
        String person,
        String activity,
        String condition,
        Optional<String> measureId,
        OptionalDouble baseline,
        OptionalDouble target,
        Optional<LocalDate> due) {}
