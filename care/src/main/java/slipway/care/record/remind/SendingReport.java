package slipway.care.record.remind;

import java.time.Instant;
import java.util.Optional;

/**
 * What came of the reminders of a clinic in a time.
 *
 * @param failing days that are tried again now
 * @param givenUp days that got no reminder because it could not be sent
 * @param lastFault the newest fault, also of a reminder that went out later
 * @param lastFaultAt when that was
 */
public record SendingReport(
        int sent, int failing, int givenUp, Optional<MailFault> lastFault, Optional<Instant> lastFaultAt) {}
