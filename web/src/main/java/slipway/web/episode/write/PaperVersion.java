package slipway.web.episode.write;

/**
 * A version in the list.
 *
 * @param by name of whoever wrote it
 */
public record PaperVersion(long number, String when, String by) {}
