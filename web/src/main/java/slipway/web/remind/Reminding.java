package slipway.web.remind;

import jakarta.mail.MessagingException;
import jakarta.mail.internet.MimeMessage;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Base64;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.mail.MailException;
import org.springframework.stereotype.Component;
import slipway.care.record.Records;
import slipway.care.record.access.Clinic;
import slipway.care.record.remind.Due;
import slipway.care.record.remind.MailFault;
import slipway.care.record.remind.Reminders;
import slipway.web.episode.Cases;

/**
 * Sends the reminders whose hour has come. Of several servers one does it at a time; should two, the row of a person and a
 * day lets one through. A server that dies between handing a message over and writing it down leaves one that comes twice.
 */
@Component
public class Reminding {
    /** Name of the work in the records; it is there once a server with mail settings has run. */
    public static final String NAME = "reminders";

    /** So many people in one go; the rest a few minutes later. */
    static final int MOST = 200;

    private static final Logger LOG = LoggerFactory.getLogger(Reminding.class);
    /** After the first failure, doubled after each further one. */
    private static final Duration FIRST_PAUSE = Duration.ofMinutes(10);

    private static final int MOST_ATTEMPTS = 5;
    /** A link in a mail that is older stops nothing; by then the code that it is about has long ended. */
    private static final int KEPT_DAYS = 400;
    /** 192 bits: nobody guesses it. */
    private static final int TOKEN_BYTES = 24;

    private final Records records;
    private final Needs needs;
    private final Clock clock;
    private final SecureRandom random = new SecureRandom();

    Reminding(Records records, Needs needs, Clock clock) {
        this.records = records;
        this.needs = needs;
        this.clock = clock;
    }

    /**
     * What came of one go.
     *
     * @param failed not sent now; most of them are tried again
     */
    public record Outcome(int sent, int failed) {
        /** For the log; empty if nothing was to do. */
        public String words() {
            return sent + failed == 0 ? "" : "%d reminders sent, %d failed".formatted(sent, failed);
        }
    }

    /** Decides for everybody whose hour has come, and sends. */
    public Outcome run(MailSettings settings) {
        Instant now = clock.instant();
        ZonedDateTime here = now.atZone(ZoneId.systemDefault());
        Reminders reminders = records.reminders();
        reminders.giveUpBefore(here.toLocalDate(), now);
        var round = new Round(settings, here);
        for (Due due : reminders.due(here.toLocalDate(), here.getHour(), now, MOST)) {
            round.decide(due);
        }
        if (round.sent > 0) {
            reminders.purge(here.toLocalDate().minusDays(KEPT_DAYS));
        }
        return new Outcome(round.sent, round.failed);
    }

    /** One go through all who are due. */
    private final class Round {
        private final MailSettings settings;
        private final MailServer server;
        private final ZonedDateTime here;
        private final LocalDate day;
        private int sent;
        private int failed;
        private Optional<MailFault> down = Optional.empty();

        private Round(MailSettings settings, ZonedDateTime here) {
            this.settings = settings;
            this.server = new MailServer(settings);
            this.here = here;
            this.day = here.toLocalDate();
        }

        private void decide(Due due) {
            Instant now = here.toInstant();
            Need need = needs.of(due, day, now, here.getZone());
            if (need == Need.NONE) {
                records.reminders().notNeeded(due, day, now);
                return;
            }
            String token = token();
            if (records.reminders().take(due, day, Cases.digest(token), now, now.plus(FIRST_PAUSE))) {
                // Whom a server that is down would keep waiting is not tried, but counted.
                tell(due, down.isPresent() ? down : send(server, settings, mail(due, need, token, settings), due));
            }
        }

        private void tell(Due due, Optional<MailFault> fault) {
            if (fault.isEmpty()) {
                records.reminders().sent(due.personId(), day, clock.instant());
                sent++;
                return;
            }
            failed(due, day, fault.get());
            failed++;
            down = fault.filter(Faults::isOfTheServer);
        }
    }

    private ReminderMail mail(Due due, Need need, String token, MailSettings settings) {
        Clinic clinic = records.clinics().find(due.clinicId()).orElseThrow();
        String base = settings.publicAddress();
        return new ReminderMail(need, clinic, base + "/home", base + "/stop/" + token);
    }

    private Optional<MailFault> send(MailServer server, MailSettings settings, ReminderMail mail, Due due) {
        try {
            MimeMessage message = server.message();
            mail.fill(message, due, settings.from(), token(), clock.instant());
            server.send(message);
            return Optional.empty();
        } catch (MailException e) {
            return Optional.of(Faults.of(e));
        } catch (MessagingException e) {
            // Only the address is not ours.
            return Optional.of(MailFault.ADDRESS_REFUSED);
        }
    }

    private void failed(Due due, LocalDate day, MailFault fault) {
        Instant now = clock.instant();
        int attempts = due.attempts() + 1;
        Optional<Instant> again = attempts < MOST_ATTEMPTS
                ? Optional.of(now.plus(FIRST_PAUSE.multipliedBy(1L << (attempts - 1))))
                : Optional.empty();
        records.reminders().failed(due.personId(), day, fault, now, again);
        LOG.warn("reminder of {} not sent, attempt {}: {}", due.personId(), attempts, fault);
    }

    private String token() {
        var bytes = new byte[TOKEN_BYTES];
        random.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }
}
