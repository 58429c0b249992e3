package slipway.web.episode.write;

/**
 * A visit in the form of words: those that the form holds, in its order, then those without words, the newest first.
 *
 * @param entry its place in the list of the form
 */
public record VisitRow(int entry, int number) {}
