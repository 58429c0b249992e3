package slipway.web.security;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import slipway.care.record.access.Credentials;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;

/**
 * Asks somebody who is signed in for the password once more. Guessing at it waits as it does at the door: whoever finds
 * a station left open must not try hundreds.
 */
@Service
class OwnPassword {
    private static final Words WORDS = Words.beside(OwnPassword.class, Language.EN);

    private final Attempts attempts;
    private final PasswordEncoder passwords;
    private final Clock clock;

    OwnPassword(Attempts attempts, PasswordEncoder passwords, Clock clock) {
        this.attempts = attempts;
        this.passwords = passwords;
        this.clock = clock;
    }

    /** Why it is not taken, as a sentence; empty if it is right. */
    Optional<String> refusal(Credentials own, String given) {
        Instant now = clock.instant();
        Attempts.Attempt attempt = attempts.count(own, now);
        if (attempt.pause().isPresent()) {
            return Optional.of(waiting(now, attempt.pause().get()));
        }
        if (passwords.matches(given, attempt.before().passwordHash())) {
            attempts.takeBack(attempt.before());
            return Optional.empty();
        }
        attempts.failed(own.account(), now);
        return Optional.of(WORDS.get("account.current.wrong"));
    }

    /** How long to wait, in words. */
    static String waiting(Instant now, Instant until) {
        return WORDS.get("wait", Math.max(1, Duration.between(now, until).toSeconds()));
    }
}
