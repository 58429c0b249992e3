package slipway.reasoning.response.course;

/**
 * A rung that was stepped up to and did not hold.
 *
 * @param barredUntilMinute minutes since 1970
 */
public record Failure(int rung, int times, long barredUntilMinute) {}
