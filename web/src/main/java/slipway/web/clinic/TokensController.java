package slipway.web.clinic;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import slipway.care.record.Act;
import slipway.care.record.access.ApiScope;
import slipway.care.record.access.ApiToken;
import slipway.care.record.access.StaffAccount;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.exercises.yaml.Mistake;
import slipway.web.episode.Desk;
import slipway.web.form.FormView;
import slipway.web.form.Option;
import slipway.web.shell.Area;
import slipway.web.shell.Notices;
import slipway.web.shell.Pages;
import slipway.web.shell.Tokens;

/** Tokens of other programs, made and ended by the clinic lead. A token is shown in the answer that makes it, and never again. */
@Controller
class TokensController {
    private static final Words WORDS = Words.beside(TokensController.class, Language.EN);
    private static final String PAGE = "/clinic/tokens";

    private final Desk desk;
    private final Pages pages;

    TokensController(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    @GetMapping(PAGE)
    String tokens(HttpServletRequest request, Model model) {
        return show(TokenForm.EMPTY, List.of(), "", request, model);
    }

    /** Not a redirect: the token would have to be kept until the next page. */
    @PostMapping(PAGE)
    String add(@ModelAttribute TokenForm given, HttpServletRequest request, HttpServletResponse response, Model model) {
        Act act = desk.act();
        List<Mistake> mistakes =
                given.mistakes(WORDS, accounts(), desk.records().tokens().list(act.clinicId()), act.at());
        if (!mistakes.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return show(given, mistakes, "", request, model);
        }
        String token = Tokens.make();
        desk.records().tokens().add(given.token(Tokens.id(token), act), Tokens.digest(token), act);
        response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
        return show(TokenForm.EMPTY, List.of(), token, request, model);
    }

    @PostMapping(PAGE + "/{id}/revoke")
    String revoke(@PathVariable String id, HttpServletRequest request) {
        desk.records().tokens().revoke(id, desk.act());
        Notices.put(request, WORDS.get("token.revoked"));
        return "redirect:" + PAGE;
    }

    private List<StaffAccount> accounts() {
        return desk.records().staff().list(Pages.staff().clinicId()).stream()
                .filter(StaffAccount::active)
                .toList();
    }

    private String show(TokenForm form, List<Mistake> mistakes, String made, HttpServletRequest request, Model model) {
        Act act = desk.act();
        List<ApiToken> tokens = desk.records().tokens().list(act.clinicId());
        Map<String, String> names = desk.records().staff().list(act.clinicId()).stream()
                .collect(Collectors.toMap(StaffAccount::id, StaffAccount::displayName));
        model.addAttribute("page", pages.page(request, Area.CLINIC, WORDS.get("tokens.title")));
        model.addAttribute("t", WORDS);
        model.addAttribute("form", new FormView(form.fields(), mistakes));
        model.addAttribute("made", made);
        model.addAttribute("now", act.at());
        model.addAttribute("tokens", tokens);
        model.addAttribute("names", names);
        model.addAttribute(
                "accounts",
                accounts().stream()
                        .map(account -> new Option(account.id(), account.displayName()))
                        .toList());
        model.addAttribute(
                "scopes",
                Arrays.stream(ApiScope.values())
                        .map(scope -> new Option(scope.key(), WORDS.get("scope." + scope.key())))
                        .toList());
        return "clinic/tokens";
    }

    /** How a token is named in the trail; empty if it is none of the clinic. */
    static Optional<String> label(List<ApiToken> tokens, String id) {
        return tokens.stream()
                .filter(token -> token.id().equals(id))
                .map(ApiToken::label)
                .findFirst();
    }
}
