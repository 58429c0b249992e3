package slipway.care.record.remind;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipway.care.record.Act;

/** Who wants reminders by e-mail, and what was sent. */
public interface Reminders {
    /** A server that was away for longer lets the reminder of the day be; assumption. */
    int LATE_HOURS = 3;

    /** What a person said last; empty if never asked, or the act may not see the person. */
    Optional<Consent> consent(String personId, Act act);

    /**
     * Writes down that a person wants reminders at the address that is recorded now.
     *
     * @param hour within {@link Consent#EARLIEST} and {@link Consent#LATEST}
     * @throws IllegalStateException if no address is recorded
     * @throws slipway.care.record.NotThere if the act may not see the person
     */
    Consent agree(String personId, int hour, Act act);

    /** Writes down that a person wants no reminders any more; nothing happens if there is no consent that holds. */
    void end(String personId, Act act);

    /** Whether a token of a reminder is known, so that its page can be shown. */
    boolean knowsStop(String tokenSha256);

    /**
     * Ends the consent of whoever got a token; the same again changes nothing.
     *
     * @return whether the token is known
     */
    boolean stop(String tokenSha256, Instant at);

    /**
     * People whose hour came on a day less than {@link #LATE_HOURS} ago: they agreed at the address that is recorded
     * now, and nothing is decided for the day. With them those whose reminder of the day may be tried again.
     *
     * @param hour the present one by the clock of the clinic
     * @param most at most so many
     */
    List<Due> due(LocalDate day, int hour, Instant now, int most);

    /**
     * Takes the reminder of a day before it is sent, and counts the attempt; of several who try, one gets it.
     *
     * @param stopSha256 digest of the token that goes out with it
     * @param again when another may try if nothing more is heard
     */
    boolean take(Due due, LocalDate day, String stopSha256, Instant now, Instant again);

    /** Says that the reminder of a day went out. */
    void sent(String personId, LocalDate day, Instant now);

    /**
     * Says that the reminder of a day did not go out.
     *
     * @param again when it is tried again; empty if it is given up
     */
    void failed(String personId, LocalDate day, MailFault fault, Instant now, Optional<Instant> again);

    /** Decides that a person needs none on a day. */
    void notNeeded(Due due, LocalDate day, Instant now);

    /** What came of the reminders of a clinic from a day on. */
    SendingReport report(String clinicId, LocalDate since);

    /** Gives up what is still tried of the days before one. */
    void giveUpBefore(LocalDate day, Instant now);

    /** Forgets the days before one, and the tokens that went out on them: their links stop nothing any more. */
    void purge(LocalDate day);
}
