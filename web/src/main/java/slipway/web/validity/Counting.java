package slipway.web.validity;

import java.util.Optional;

/**
 * How far the counting of a clinic's records is.
 *
 * @param running whether it goes on now
 * @param done records looked at
 * @param total records to look at; 0 before that is known
 * @param failed whether the last one broke off by a fault
 * @param tally the newest result; empty before the first
 */
public record Counting(boolean running, int done, int total, boolean failed, Optional<Tally> tally) {
    static final Counting NONE = new Counting(false, 0, 0, false, Optional.empty());
}
