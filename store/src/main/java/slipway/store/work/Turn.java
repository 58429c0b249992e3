package slipway.store.work;

import java.time.Instant;

/**
 * A turn that this server has taken.
 *
 * @param name of the work
 * @param due when it was due, by the clock of the database
 * @param taking counts how often the work was taken; another server that takes it over gets the next number
 */
public record Turn(String name, Instant due, long taking) {}
