package slipway.reasoning.response.course;

/**
 * A dose that came into force.
 *
 * @param minute since when, minutes since 1970
 * @param byStep whether a step up led there
 */
public record RungChange(long minute, int rung, boolean byStep) {}
