package slipway.web.security;

import java.time.Clock;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Service;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.access.Credentials;
import slipway.care.record.access.KeptPasskey;
import slipway.care.record.access.Passkey;
import slipway.care.record.access.PasskeyUse;
import slipway.care.record.access.StaffAccount;
import slipway.web.shell.StaffUser;
import slipway.web.shell.Tokens;

/** Password and code, or a passkey, against the accounts. An answer never tells whether a login exists. */
@Service
class SignIn {
    private final Records records;
    private final Attempts attempts;
    private final PasswordEncoder passwords;
    private final Clock clock;
    private final String nobodysHash;

    SignIn(Records records, Attempts attempts, PasswordEncoder passwords, Clock clock) {
        this.records = records;
        this.attempts = attempts;
        this.passwords = passwords;
        this.clock = clock;
        this.nobodysHash = Objects.requireNonNull(passwords.encode("a password that nobody has"));
    }

    /** What came of an attempt. */
    sealed interface Outcome {
        /** In, with every factor that the account asks for. */
        record In(StaffUser user) implements Outcome {}

        /** The password is right; a code is asked for. */
        record CodeNeeded(String login) implements Outcome {}

        /** Wrong login, password or code: which of them is not said. */
        record Wrong() implements Outcome {}

        /** A passkey told a lower count of signatures than before. */
        record CountBack() implements Outcome {}

        /** Too many attempts; not even looked at. */
        record Wait(Instant until) implements Outcome {}
    }

    Outcome password(String login, String password) {
        Instant now = clock.instant();
        Optional<Credentials> found = records.staff().credentials(login);
        if (found.isEmpty()) {
            // As slow as a real check, so that the time does not tell which logins exist.
            passwords.matches(password, nobodysHash);
            return new Outcome.Wrong();
        }
        Attempts.Attempt attempt = attempts.count(found.get(), now);
        if (attempt.pause().isPresent()) {
            return new Outcome.Wait(attempt.pause().get());
        }
        Credentials credentials = attempt.before();
        StaffAccount account = credentials.account();
        if (!passwords.matches(password, credentials.passwordHash()) || !account.active()) {
            return wrong(account, now);
        }
        if (credentials.totpSecret().isPresent()) {
            attempts.takeBack(credentials);
            return new Outcome.CodeNeeded(login);
        }
        return in(account, now);
    }

    Outcome code(String login, String code) {
        Instant now = clock.instant();
        Attempts.Attempt attempt =
                attempts.count(records.staff().credentials(login).orElseThrow(), now);
        if (attempt.pause().isPresent()) {
            return new Outcome.Wait(attempt.pause().get());
        }
        Credentials credentials = attempt.before();
        OptionalLong step = credentials.totpSecret().stream()
                .flatMapToLong(secret -> SecondFactor.matchingStep(secret, code, now, 0).stream())
                .findFirst();
        boolean right = step.isPresent()
                && credentials.account().active()
                && records.staff().useTotpStep(credentials.account().id(), step.getAsLong());
        return right ? in(credentials.account(), now) : wrong(credentials.account(), now);
    }

    /** A passkey whose owner has shown who they are: both factors at once. It waits as a password does. */
    Outcome passkey(RelyingParty party, String challenge, String given) {
        Instant now = clock.instant();
        Optional<PasskeyCheck.Answer> answer = PasskeyCheck.read(given);
        Optional<KeptPasskey> kept = answer.flatMap(read -> records.passkeys().find(read.credentialId()));
        if (kept.isEmpty()) {
            return new Outcome.Wrong();
        }
        Passkey passkey = kept.get().passkey();
        StaffAccount owner = records.staff().find(passkey.staffId()).orElseThrow();
        Attempts.Attempt attempt =
                attempts.count(records.staff().credentials(owner.login()).orElseThrow(), now);
        if (attempt.pause().isPresent()) {
            return new Outcome.Wait(attempt.pause().get());
        }
        StaffAccount account = attempt.before().account();
        PasskeyCheck.Verdict verdict = PasskeyCheck.verdict(party, challenge, kept.get(), answer.orElseThrow());
        if (verdict instanceof PasskeyCheck.Verdict.CountBack) {
            records.passkeys().countWentBack(passkey, act(account, now));
            return new Outcome.CountBack();
        }
        boolean right = account.active()
                && verdict instanceof PasskeyCheck.Verdict.Right told
                && records.passkeys()
                        .use(new PasskeyUse(
                                passkey.id(), told.signatureCount(), told.backedUp(), Tokens.digest(challenge), now));
        return right ? in(account, now) : wrong(account, now);
    }

    private Outcome wrong(StaffAccount account, Instant now) {
        attempts.failed(account, now);
        return new Outcome.Wrong();
    }

    private Outcome in(StaffAccount account, Instant now) {
        records.staff().signedIn(account.id(), act(account, now));
        return new Outcome.In(user(account));
    }

    static StaffUser user(StaffAccount account) {
        return new StaffUser(account.id(), account.clinicId(), account.displayName(), account.roles());
    }

    static Act act(StaffAccount account, Instant now) {
        Role role = account.roles().stream().sorted().findFirst().orElseThrow();
        return new Act(account.id(), role, account.clinicId(), now);
    }
}
