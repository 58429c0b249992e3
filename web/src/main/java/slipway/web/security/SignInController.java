package slipway.web.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.WebOptions;
import slipway.web.shell.Pages;
import slipway.web.shell.StaffUser;

/** Signing in and out. */
@Controller
class SignInController {
    private static final Words WORDS = Words.beside(SignInController.class, Language.EN);
    private static final String PENDING_SINCE = "pendingSince";
    private static final String IDLE_MINUTES = "15";
    private static final Duration PENDING_FOR = Duration.ofMinutes(5);

    private final Pages pages;
    private final SignIn signIn;
    private final Records records;
    private final SecurityContextRepository contexts;
    private final WebOptions options;
    private final Clock clock;

    SignInController(
            Pages pages,
            SignIn signIn,
            Records records,
            SecurityContextRepository contexts,
            WebOptions options,
            Clock clock) {
        this.pages = pages;
        this.signIn = signIn;
        this.records = records;
        this.contexts = contexts;
        this.options = options;
        this.clock = clock;
    }

    @GetMapping("/")
    String start() {
        return Pages.findStaff().isPresent() ? "redirect:" + home(Pages.staff()) : "redirect:/sign-in";
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
            return enter(in.user(), request, response);
        }
        if (outcome instanceof SignIn.Outcome.CodeNeeded needed) {
            keep(needed.login(), List.of(new SimpleGrantedAuthority(Authorities.PENDING)), request, response);
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
            leave(request, response);
            return "redirect:/sign-in?ended";
        }
        String login = request.getUserPrincipal().getName();
        SignIn.Outcome outcome = signIn.code(login, code);
        return outcome instanceof SignIn.Outcome.In in
                ? enter(in.user(), request, response)
                : showCode(request, model, Optional.of(refusal(outcome, "code.wrong")));
    }

    private String refusal(SignIn.Outcome outcome, String wrong) {
        return outcome instanceof SignIn.Outcome.Wait wait ? waiting(wait.until()) : WORDS.get(wrong);
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
        leave(request, response);
        return "redirect:/sign-in?out";
    }

    private String enter(StaffUser user, HttpServletRequest request, HttpServletResponse response) {
        List<GrantedAuthority> granted = new ArrayList<>();
        granted.add(new SimpleGrantedAuthority(Authorities.STAFF));
        user.roles().forEach(role -> granted.add(new SimpleGrantedAuthority(role.name())));
        keep(user, granted, request, response);
        String minutes = records.clinics()
                .setting(user.clinicId(), "idleMinutes", IDLE_MINUTES)
                .value();
        request.getSession().setMaxInactiveInterval((int)
                Duration.ofMinutes(Integer.parseInt(minutes)).toSeconds());
        return "redirect:" + home(user);
    }

    private void keep(
            Object principal,
            List<? extends GrantedAuthority> granted,
            HttpServletRequest request,
            HttpServletResponse response) {
        // A new id: whoever knew the old one must not be signed in by this.
        request.getSession();
        request.changeSessionId();
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(principal, null, granted));
        SecurityContextHolder.setContext(context);
        contexts.saveContext(context, request, response);
    }

    private static void leave(HttpServletRequest request, HttpServletResponse response) {
        SecurityContextHolder.clearContext();
        @Nullable HttpSession session = request.getSession(false);
        if (session != null) {
            session.invalidate();
        }
        // Whatever the browser kept of these pages goes with the session.
        response.setHeader("Clear-Site-Data", "\"cache\"");
    }

    private static String home(StaffUser user) {
        return user.roles().stream().allMatch(role -> role == Role.AUDITOR) ? "/clinic" : "/today";
    }

    private String waiting(Instant until) {
        return WORDS.get(
                "wait", Math.max(1, Duration.between(clock.instant(), until).toSeconds()));
    }

    private String show(HttpServletRequest request, Model model, String login, Optional<String> mistake) {
        model.addAttribute("page", pages.page(request, WORDS.get("title")));
        model.addAttribute("t", WORDS);
        model.addAttribute("login", login);
        model.addAttribute("mistake", mistake);
        model.addAttribute("ended", request.getParameterMap().containsKey("ended"));
        model.addAttribute("out", request.getParameterMap().containsKey("out"));
        model.addAttribute("demo", options.demo());
        return "security/sign-in";
    }

    private String showCode(HttpServletRequest request, Model model, Optional<String> mistake) {
        model.addAttribute("page", pages.page(request, WORDS.get("code.title")));
        model.addAttribute("t", WORDS);
        model.addAttribute("mistake", mistake);
        return "security/code";
    }
}
