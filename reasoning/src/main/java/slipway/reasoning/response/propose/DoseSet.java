package slipway.reasoning.response.propose;

import java.time.OffsetDateTime;

/**
 * A dose and a ceiling that the therapist set anew for one exercise: in force for every report received after it.
 *
 * @param id of the decision
 * @param exercise with the ladder through the new dose, and the loads on it
 */
public record DoseSet(String id, OffsetDateTime at, FollowedExercise exercise) {}
