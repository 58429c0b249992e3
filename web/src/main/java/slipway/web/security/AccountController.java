package slipway.web.security;

import jakarta.servlet.http.HttpServletRequest;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.Objects;
import java.util.Optional;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.access.Credentials;
import slipway.care.record.access.StaffAccount;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.shell.Notices;
import slipway.web.shell.Pages;
import slipway.web.shell.QrCode;

/** One's own sign-in: password, second factor and the list of passkeys. */
@Controller
public class AccountController {
    private static final Words WORDS = Words.beside(AccountController.class, Language.EN);
    private static final String NEW_SECRET = "newSecret";

    private final Pages pages;
    private final Records records;
    private final RelyingParties parties;
    private final PasswordPolicy policy;
    private final OwnPassword own;
    private final PasswordEncoder passwords;
    private final Clock clock;
    private final SecureRandom random = new SecureRandom();

    AccountController(
            Pages pages,
            Records records,
            RelyingParties parties,
            PasswordPolicy policy,
            OwnPassword own,
            PasswordEncoder passwords,
            Clock clock) {
        this.pages = pages;
        this.records = records;
        this.parties = parties;
        this.policy = policy;
        this.own = own;
        this.passwords = passwords;
        this.clock = clock;
    }

    @GetMapping("/account")
    String account(HttpServletRequest request, Model model) {
        Credentials credentials = credentials();
        boolean second = credentials.totpSecret().isPresent();
        if (!second && request.getSession().getAttribute(NEW_SECRET) == null) {
            request.getSession().setAttribute(NEW_SECRET, SecondFactor.newSecret(random));
        }
        Optional<String> secret = second
                ? Optional.empty()
                : Optional.of(String.valueOf(request.getSession().getAttribute(NEW_SECRET)));
        model.addAttribute("page", pages.page(request, WORDS.get("account.title")));
        model.addAttribute("t", WORDS);
        model.addAttribute("login", credentials.account().login());
        model.addAttribute("second", second);
        model.addAttribute("party", parties.findFor(request));
        model.addAttribute(
                "passkeys", records.passkeys().list(credentials.account().id()));
        model.addAttribute("secret", secret);
        model.addAttribute(
                "code",
                secret.map(key -> QrCode.of(
                        SecondFactor.address(key, credentials.account().login()))));
        return "security/account";
    }

    @PostMapping("/account/password")
    String password(@RequestParam String current, @RequestParam String changed, HttpServletRequest request) {
        Credentials credentials = credentials();
        StaffAccount account = credentials.account();
        Optional<String> wrong = own.refusal(credentials, current);
        if (wrong.isPresent()) {
            return back(request, wrong.get());
        }
        Optional<String> refusal =
                policy.refusal(changed, credentials.totpSecret().isPresent(), account.login());
        if (refusal.isPresent()) {
            return back(request, WORDS.get(refusal.get()));
        }
        records.staff().setPassword(account.id(), Objects.requireNonNull(passwords.encode(changed)), act(account));
        // All sessions of the account ended with the old password; this one goes on under a new id.
        request.changeSessionId();
        return back(request, WORDS.get("account.saved"));
    }

    @PostMapping("/account/second-factor")
    String turnOn(@RequestParam String code, HttpServletRequest request) {
        StaffAccount account = credentials().account();
        String secret = String.valueOf(request.getSession().getAttribute(NEW_SECRET));
        if (SecondFactor.matchingStep(secret, code, clock.instant(), 0).isEmpty()) {
            return back(request, WORDS.get("code.wrong"));
        }
        records.staff().setTotp(account.id(), Optional.of(secret), act(account));
        request.getSession().removeAttribute(NEW_SECRET);
        return back(request, WORDS.get("account.second.saved"));
    }

    @PostMapping("/account/second-factor/remove")
    String turnOff(@RequestParam String current, HttpServletRequest request) {
        Credentials credentials = credentials();
        StaffAccount account = credentials.account();
        Optional<String> wrong = own.refusal(credentials, current);
        if (wrong.isPresent()) {
            return back(request, wrong.get());
        }
        if (policy.refusal(current, false, account.login()).isPresent()) {
            return back(request, WORDS.get("account.second.stay"));
        }
        records.staff().setTotp(account.id(), Optional.empty(), act(account));
        return back(request, WORDS.get("account.second.removed"));
    }

    private static String back(HttpServletRequest request, String sentence) {
        Notices.put(request, sentence);
        return "redirect:/account";
    }

    private Credentials credentials() {
        return own(records);
    }

    /** What signing in of whoever is signed in needs. */
    static Credentials own(Records records) {
        StaffAccount account = records.staff().find(Pages.staff().accountId()).orElseThrow();
        return records.staff().credentials(account.login()).orElseThrow();
    }

    private Act act(StaffAccount account) {
        return SignIn.act(account, clock.instant());
    }
}
