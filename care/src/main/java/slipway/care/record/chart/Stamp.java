package slipway.care.record.chart;

/**
 * Which program and data made a result.
 *
 * @param programVersion version of the program
 * @param dataDigest digest of models and data in whatever form the maker uses, at most 200 characters
 */
public record Stamp(String programVersion, String dataDigest) {}
