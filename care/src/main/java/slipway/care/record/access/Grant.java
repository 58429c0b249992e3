package slipway.care.record.access;

import java.time.Instant;

/** Glass that was broken: for a while, for one person, with a reason that is kept. */
public record Grant(String id, String staffId, String personId, String reason, Instant at, Instant until) {}
