package slipway.web.clinic;

import jakarta.servlet.http.HttpServletRequest;
import java.security.SecureRandom;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.codec.binary.Base32;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.NotThere;
import slipway.care.record.Role;
import slipway.care.record.Saving;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.access.Team;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.episode.Desk;
import slipway.web.shell.Notices;
import slipway.web.shell.Pages;

/** Accounts and teams, changed by the clinic lead. */
@Controller
class StaffController {
    private static final Words WORDS = Words.beside(StaffController.class, Language.EN);
    /** 100 bits: whoever gets it changes it. */
    private static final int FIRST_PASSWORD_BYTES = 13;

    private static final String BACK = "redirect:/clinic";

    private final Desk desk;
    private final PasswordEncoder passwords;
    private final SecureRandom random = new SecureRandom();

    StaffController(Desk desk, PasswordEncoder passwords) {
        this.desk = desk;
        this.passwords = passwords;
    }

    @PostMapping("/clinic/staff")
    String add(@RequestParam String login, @ModelAttribute StaffForm form, HttpServletRequest request) {
        String plain = login.strip().toLowerCase(Locale.ROOT);
        boolean usable = plain.matches("[a-z0-9][a-z0-9.-]{1,39}")
                && form.hasName()
                && form.rolesRead().isPresent()
                && form.reachRead().isPresent();
        if (!usable) {
            return say(request, "staff.wrong");
        }
        if (desk.records().staff().credentials(plain).isPresent()) {
            return say(request, "staff.taken");
        }
        String password = firstPassword();
        desk.records()
                .staff()
                .add(
                        plain,
                        form.name().strip(),
                        form.rolesRead().orElseThrow(),
                        form.reachRead().orElseThrow(),
                        Objects.requireNonNull(passwords.encode(password)),
                        desk.act());
        return say(request, "staff.added", plain, password);
    }

    @PostMapping("/clinic/staff/{id}")
    String change(
            @PathVariable String id,
            @ModelAttribute StaffForm form,
            @RequestParam(defaultValue = "") String active,
            @RequestParam long version,
            HttpServletRequest request) {
        StaffAccount now = own(id);
        if (!form.hasName() || form.rolesRead().isEmpty() || form.reachRead().isEmpty()) {
            return say(request, "staff.wrong");
        }
        Set<Role> roles = form.rolesRead().get();
        boolean stays = active.equals("yes");
        if (id.equals(Pages.staff().accountId()) && (!stays || !roles.contains(Role.LEAD))) {
            return say(request, "staff.self");
        }
        Saving<StaffAccount> saving = desk.records()
                .staff()
                .change(
                        new StaffAccount(
                                id,
                                now.login(),
                                form.name().strip(),
                                now.clinicId(),
                                roles,
                                form.reachRead().get(),
                                stays,
                                version),
                        desk.act());
        if (saving instanceof Saving.Saved && id.equals(Pages.staff().accountId()) && !roles.equals(now.roles())) {
            return "redirect:/sign-in?changed";
        }
        return say(request, saving instanceof Saving.Stale ? "stale" : "saved");
    }

    /** A new first password, for whoever forgot the own; the second factor, the passkeys and all sessions go too. */
    @PostMapping("/clinic/staff/{id}/password")
    String reset(@PathVariable String id, HttpServletRequest request) {
        StaffAccount account = own(id);
        if (id.equals(Pages.staff().accountId())) {
            return say(request, "staff.password.self");
        }
        String password = firstPassword();
        desk.records().staff().setPassword(id, Objects.requireNonNull(passwords.encode(password)), desk.act());
        desk.records().staff().setTotp(id, Optional.empty(), desk.act());
        desk.records().passkeys().removeAll(id, desk.act());
        return say(request, "staff.reset", account.login(), password);
    }

    @PostMapping("/clinic/teams")
    String addTeam(
            @RequestParam String name,
            @RequestParam(required = false) List<String> members,
            HttpServletRequest request) {
        Optional<Set<String>> ids = members(members);
        if (!name.strip().matches("\\P{Cntrl}{1,80}") || ids.isEmpty()) {
            return say(request, "team.wrong");
        }
        desk.records().staff().addTeam(name.strip(), ids.get(), desk.act());
        return say(request, "saved");
    }

    @PostMapping("/clinic/teams/{id}")
    String changeTeam(
            @PathVariable String id,
            @RequestParam String name,
            @RequestParam(required = false) List<String> members,
            @RequestParam(defaultValue = "") String action,
            HttpServletRequest request) {
        String clinicId = Pages.staff().clinicId();
        Team team = desk.records().staff().teams(clinicId).stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new NotThere("team", id));
        if (action.equals("remove")) {
            desk.records().staff().removeTeam(team.id(), desk.act());
            return say(request, "saved");
        }
        Optional<Set<String>> ids = members(members);
        if (!name.strip().matches("\\P{Cntrl}{1,80}") || ids.isEmpty()) {
            return say(request, "team.wrong");
        }
        desk.records().staff().changeTeam(new Team(id, clinicId, name.strip(), ids.get()), desk.act());
        return say(request, "saved");
    }

    /** Ids of accounts of this clinic; empty if any is not. */
    private Optional<Set<String>> members(List<String> given) {
        Set<String> wanted = given == null ? Set.of() : Set.copyOf(given);
        Set<String> ours = desk.records().staff().list(Pages.staff().clinicId()).stream()
                .map(StaffAccount::id)
                .collect(Collectors.toSet());
        return ours.containsAll(wanted) ? Optional.of(wanted) : Optional.empty();
    }

    private StaffAccount own(String id) {
        return desk.records()
                .staff()
                .find(id)
                .filter(account -> account.clinicId().equals(Pages.staff().clinicId()))
                .orElseThrow(() -> new NotThere("account", id));
    }

    private String firstPassword() {
        var bytes = new byte[FIRST_PASSWORD_BYTES];
        random.nextBytes(bytes);
        return new Base32()
                .encodeAsString(bytes)
                .replace("=", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("(.{4})(?!$)", "$1-");
    }

    private static String say(HttpServletRequest request, String key, Object... values) {
        Notices.put(request, WORDS.get(key, values));
        return BACK;
    }
}
