package slipway.web.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.springframework.http.HttpStatus;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.access.Clinic;
import slipway.care.record.access.Reach;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.exercises.yaml.Mistake;
import slipway.web.form.FormReader;
import slipway.web.form.FormView;
import slipway.web.form.Option;
import slipway.web.shell.Notices;
import slipway.web.shell.Pages;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The first start on real data: the first clinic and its lead, made with the code that the program printed. */
@Controller
class SetUpController {
    private static final Words WORDS = Words.beside(SetUpController.class, Language.EN);
    private static final List<String> SETTINGS = List.of("therapy", "primary-care", "secondary-care", "emergency");

    private final Pages pages;
    private final Records records;
    private final PasswordPolicy policy;
    private final PasswordEncoder passwords;
    private final Clock clock;

    SetUpController(Pages pages, Records records, PasswordPolicy policy, PasswordEncoder passwords, Clock clock) {
        this.pages = pages;
        this.records = records;
        this.policy = policy;
        this.passwords = passwords;
        this.clock = clock;
    }

    /** The fields of the form. */
    record SetUp(
            String code,
            String clinic,
            String setting,
            String phone,
            String emergency,
            String name,
            String login,
            String password) {
        SetUp {
            code = FormReader.text(code);
            clinic = FormReader.text(clinic);
            setting = FormReader.text(setting);
            phone = FormReader.text(phone);
            emergency = FormReader.text(emergency);
            name = FormReader.text(name);
            login = FormReader.text(login);
            password = FormReader.text(password);
        }

        ObjectNode fields() {
            // The password is not sent back.
            return JsonMapper.shared()
                    .createObjectNode()
                    .put("code", code)
                    .put("clinic", clinic)
                    .put("setting", setting)
                    .put("phone", phone)
                    .put("emergency", emergency)
                    .put("name", name)
                    .put("login", login);
        }
    }

    @GetMapping("/set-up")
    String ask(HttpServletRequest request, Model model) {
        if (!SetUpCode.needed(records)) {
            return "redirect:/sign-in";
        }
        SetUp known = there().map(clinic -> new SetUp(
                        "", clinic.name(), clinic.setting(), clinic.phone(), clinic.emergencyNumber(), "", "", ""))
                .orElseGet(() -> new SetUp("", "", "therapy", "", "", "", "", ""));
        return show(known, List.of(), request, model);
    }

    @PostMapping("/set-up")
    String take(@ModelAttribute SetUp given, HttpServletRequest request, HttpServletResponse response, Model model) {
        if (!SetUpCode.needed(records)) {
            return "redirect:/sign-in";
        }
        List<Mistake> mistakes = mistakes(given);
        if (mistakes.isEmpty() && !records.clinics().useSetUpCode(SetUpCode.digest(given.code()), clock.instant())) {
            mistakes.add(new Mistake(0, 0, "code", WORDS.get("setup.code.wrong")));
        }
        if (!mistakes.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return show(given, mistakes, request, model);
        }
        Act act = clinic(given);
        records.staff()
                .add(
                        login(given),
                        given.name().strip(),
                        EnumSet.of(Role.LEAD, Role.THERAPIST),
                        Reach.CLINIC,
                        Objects.requireNonNull(passwords.encode(given.password())),
                        act);
        Notices.put(request, WORDS.get("setup.done"));
        return "redirect:/sign-in";
    }

    /** The clinic that is there already, without an account: the first account becomes its lead. */
    private Optional<Clinic> there() {
        return records.clinics().list().stream().findFirst();
    }

    /** Makes the clinic, or sets right the one that is there; in its name the account is made. */
    private Act clinic(SetUp given) {
        Optional<Clinic> there = there();
        String id = there.map(Clinic::id).orElseGet(() -> UUID.randomUUID().toString());
        var act = new Act("set-up", Role.PROGRAM, id, clock.instant());
        String name = given.clinic().strip();
        String phone = given.phone().strip();
        String emergency = given.emergency().strip();
        if (there.isEmpty()) {
            records.clinics().add(name, given.setting(), phone, emergency, false, act);
        } else {
            Clinic known = there.get();
            records.clinics()
                    .change(
                            new Clinic(id, name, given.setting(), phone, emergency, known.demo(), known.version()),
                            act);
        }
        return act;
    }

    private static String login(SetUp given) {
        return given.login().strip().toLowerCase(Locale.ROOT);
    }

    private List<Mistake> mistakes(SetUp given) {
        var mistakes = new ArrayList<Mistake>();
        need(mistakes, "clinic", given.clinic().strip().matches(".{1,80}"));
        need(mistakes, "setting", SETTINGS.contains(given.setting()));
        need(mistakes, "phone", given.phone().isBlank() || given.phone().strip().matches("[0-9+() .-]{3,30}"));
        need(mistakes, "emergency", given.emergency().strip().matches("[0-9+() .-]{2,20}"));
        need(mistakes, "name", given.name().strip().matches(".{1,80}"));
        need(mistakes, "login", login(given).matches("[a-z0-9][a-z0-9.-]{1,39}"));
        policy.refusal(given.password(), false, login(given))
                .ifPresent(key -> mistakes.add(new Mistake(0, 0, "password", WORDS.get(key))));
        return mistakes;
    }

    private static void need(List<Mistake> mistakes, String field, boolean holds) {
        if (!holds) {
            mistakes.add(new Mistake(0, 0, field, WORDS.get("setup.wrong." + field)));
        }
    }

    private String show(SetUp given, List<Mistake> mistakes, HttpServletRequest request, Model model) {
        model.addAttribute("page", pages.page(request, WORDS.get("setup.title")));
        model.addAttribute("t", WORDS);
        model.addAttribute("there", there().map(Clinic::name));
        model.addAttribute("form", new FormView(given.fields(), mistakes));
        model.addAttribute(
                "settings",
                SETTINGS.stream()
                        .map(key -> new Option(key, WORDS.get("setup.setting." + key)))
                        .toList());
        return "security/set-up";
    }
}
