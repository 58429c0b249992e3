package slipway.reasoning.plan;

/**
 * Which model and data made a plan.
 *
 * @param version of the program
 * @param parametersSha256 of the parameter file
 * @param evidenceSha256 of the published numbers
 * @param draws of the nerve model
 * @param seed of its draws
 */
public record ModelStamp(String version, String parametersSha256, String evidenceSha256, int draws, long seed) {}
