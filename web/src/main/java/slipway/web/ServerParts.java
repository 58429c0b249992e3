package slipway.web;

import java.time.Clock;
import slipway.care.record.Records;

/**
 * What the server works on.
 *
 * @param records everything that is kept of people and staff
 * @param sessions who is signed in; shared by all servers on the same records
 * @param clock tells the time of everything that is written
 */
public record ServerParts(Records records, SessionShelf sessions, Clock clock) {}
