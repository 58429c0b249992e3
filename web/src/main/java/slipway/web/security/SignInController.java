package slipway.web.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.Records;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.WebOptions;
import slipway.web.shell.Pages;
import tools.jackson.databind.node.ObjectNode;

/** Signing in and out. */
@Controller
class SignInController {
    private static final Words WORDS = Words.beside(SignInController.class, Language.EN);
    private static final String PENDING_SINCE = "pendingSince";
    private static final Duration PENDING_FOR = Duration.ofMinutes(5);

    private final Pages pages;
    private final SignIn signIn;
    private final Records records;
    private final Entrance entrance;
    private final RelyingParties parties;
    private final WebOptions options;
    private final Clock clock;

    SignInController(
            Pages pages,
            SignIn signIn,
            Records records,
            Entrance entrance,
            RelyingParties parties,
            WebOptions options,
            Clock clock) {
        this.pages = pages;
        this.signIn = signIn;
        this.records = records;
        this.entrance = entrance;
        this.parties = parties;
        this.options = options;
        this.clock = clock;
    }

    @GetMapping("/")
    String start() {
        return Pages.findStaff().isPresent() ? "redirect:" + Entrance.home(Pages.staff()) : "redirect:/sign-in";
    }

    @GetMapping("/sign-in")
    String ask(HttpServletRequest request, Model model) {
        if (SetUpCode.needed(records)) {
            return "redirect:/set-up";
        }
        return show(request, model, "", Optional.empty());
    }

    @PostMapping("/sign-in")
    String take(
            @RequestParam String login,
            @RequestParam String password,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        String name = login.strip().toLowerCase(Locale.ROOT);
        SignIn.Outcome outcome = signIn.password(name, password);
        if (outcome instanceof SignIn.Outcome.In in) {
            return entrance.enter(in.user(), request, response);
        }
        if (outcome instanceof SignIn.Outcome.CodeNeeded needed) {
            entrance.letWait(needed.login(), request, response);
            request.getSession().setAttribute(PENDING_SINCE, clock.instant());
            return "redirect:/sign-in/code";
        }
        return show(request, model, name, Optional.of(refusal(outcome, "wrong")));
    }

    @GetMapping("/sign-in/code")
    String askCode(HttpServletRequest request, Model model) {
        return showCode(request, model, Optional.empty());
    }

    @PostMapping("/sign-in/code")
    String takeCode(@RequestParam String code, HttpServletRequest request, HttpServletResponse response, Model model) {
        if (!(request.getSession().getAttribute(PENDING_SINCE) instanceof Instant since)
                || clock.instant().isAfter(since.plus(PENDING_FOR))) {
            Entrance.leave(request, response);
            return "redirect:/sign-in?ended";
        }
        String login = request.getUserPrincipal().getName();
        SignIn.Outcome outcome = signIn.code(login, code);
        return outcome instanceof SignIn.Outcome.In in
                ? entrance.enter(in.user(), request, response)
                : showCode(request, model, Optional.of(refusal(outcome, "code.wrong")));
    }

    /** What the browser is to ask the device for. */
    @PostMapping("/sign-in/passkey/options")
    ResponseEntity<ObjectNode> askPasskey(HttpServletRequest request) {
        RelyingParty party = party();
        String challenge = PasskeyChallenge.give(request, PasskeyChallenge.ENTER, clock.instant());
        return ResponseEntity.ok().contentType(MediaType.APPLICATION_JSON).body(PasskeyOptions.enter(party, challenge));
    }

    @PostMapping("/sign-in/passkey")
    String takePasskey(
            @RequestParam String answer, HttpServletRequest request, HttpServletResponse response, Model model) {
        RelyingParty party = party();
        Optional<String> challenge = PasskeyChallenge.take(request, PasskeyChallenge.ENTER, clock.instant());
        if (challenge.isEmpty()) {
            return show(request, model, "", Optional.of(WORDS.get("passkey.late")));
        }
        SignIn.Outcome outcome = signIn.passkey(party, challenge.get(), answer);
        if (outcome instanceof SignIn.Outcome.In in) {
            return entrance.enter(in.user(), request, response);
        }
        String wrong = outcome instanceof SignIn.Outcome.CountBack ? "passkey.count" : "passkey.wrong";
        return show(request, model, "", Optional.of(refusal(outcome, wrong)));
    }

    private RelyingParty party() {
        return parties.find().orElseThrow(() -> new NotThere("use of passkeys at this address", ""));
    }

    private String refusal(SignIn.Outcome outcome, String wrong) {
        return outcome instanceof SignIn.Outcome.Wait wait
                ? OwnPassword.waiting(clock.instant(), wait.until())
                : WORDS.get(wrong);
    }

    @PostMapping("/sign-out")
    String out(HttpServletRequest request, HttpServletResponse response) {
        Pages.findStaff()
                .ifPresent(user -> records.staff()
                        .signedOut(
                                user.accountId(),
                                new Act(
                                        user.accountId(),
                                        user.roles().stream()
                                                .sorted()
                                                .findFirst()
                                                .orElseThrow(),
                                        user.clinicId(),
                                        clock.instant())));
        Entrance.leave(request, response);
        return "redirect:/sign-in?out";
    }

    private String show(HttpServletRequest request, Model model, String login, Optional<String> mistake) {
        model.addAttribute("page", pages.page(request, WORDS.get("title")));
        model.addAttribute("t", WORDS);
        model.addAttribute("login", login);
        model.addAttribute("mistake", mistake);
        model.addAttribute("ended", request.getParameterMap().containsKey("ended"));
        model.addAttribute("out", request.getParameterMap().containsKey("out"));
        model.addAttribute("changed", request.getParameterMap().containsKey("changed"));
        model.addAttribute("demo", options.demo());
        model.addAttribute("party", parties.findFor(request));
        return "security/sign-in";
    }

    private String showCode(HttpServletRequest request, Model model, Optional<String> mistake) {
        model.addAttribute("page", pages.page(request, WORDS.get("code.title")));
        model.addAttribute("t", WORDS);
        model.addAttribute("mistake", mistake);
        return "security/code";
    }
}
