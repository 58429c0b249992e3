package slipway.web.episode.write;

/**
 * What whoever is signed in may do with a paper.
 *
 * @param waits whether it waits for the signature of a therapist
 */
public record May(boolean sign, boolean coSign, boolean add, boolean waits) {}
