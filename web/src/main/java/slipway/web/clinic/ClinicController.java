package slipway.web.clinic;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.Saving;
import slipway.care.record.access.Clinic;
import slipway.care.record.access.Reach;
import slipway.care.record.access.Setting;
import slipway.care.record.access.StaffAccount;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.exercises.yaml.Mistake;
import slipway.store.backup.Backups;
import slipway.store.work.SharedWork;
import slipway.web.episode.Desk;
import slipway.web.form.FormReader;
import slipway.web.form.FormView;
import slipway.web.form.Option;
import slipway.web.remind.Reminding;
import slipway.web.shell.Area;
import slipway.web.shell.Notices;
import slipway.web.shell.Pages;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The page of the clinic: what it is called, how it works, who works there. */
@Controller
class ClinicController {
    private static final Words WORDS = Words.beside(ClinicController.class, Language.EN);
    private static final Duration GLASS_SHOWN = Duration.ofDays(30);
    private static final int MAIL_DAYS = 7;
    private static final List<String> KINDS = List.of("therapy", "primary-care", "secondary-care", "emergency");

    private final Desk desk;
    private final Pages pages;
    private final Backups backups;
    private final SharedWork work;

    ClinicController(Desk desk, Pages pages, Backups backups, SharedWork work) {
        this.desk = desk;
        this.pages = pages;
        this.backups = backups;
        this.work = work;
    }

    /** The fields of the clinic's own form. */
    record Details(String name, String kind, String phone, String emergency, long version) {
        Details {
            name = FormReader.text(name);
            kind = FormReader.text(kind);
            phone = FormReader.text(phone);
            emergency = FormReader.text(emergency);
        }

        ObjectNode fields() {
            return JsonMapper.shared()
                    .createObjectNode()
                    .put("name", name)
                    .put("kind", kind)
                    .put("phone", phone)
                    .put("emergency", emergency);
        }
    }

    @GetMapping("/clinic")
    String clinic(HttpServletRequest request, Model model) {
        Clinic clinic = clinic();
        var details = new Details(
                clinic.name(), clinic.setting(), clinic.phone(), clinic.emergencyNumber(), clinic.version());
        return show(details, List.of(), request, model);
    }

    @PostMapping("/clinic")
    String change(
            @ModelAttribute Details given, HttpServletRequest request, HttpServletResponse response, Model model) {
        List<Mistake> mistakes = mistakes(given);
        if (!mistakes.isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return show(given, mistakes, request, model);
        }
        Clinic now = clinic();
        Saving<Clinic> saving = desk.records()
                .clinics()
                .change(
                        new Clinic(
                                now.id(),
                                given.name().strip(),
                                given.kind(),
                                given.phone().strip(),
                                given.emergency().strip(),
                                now.demo(),
                                given.version()),
                        desk.act());
        Notices.put(request, WORDS.get(saving instanceof Saving.Stale ? "stale" : "saved"));
        return "redirect:/clinic";
    }

    @PostMapping("/clinic/settings")
    String set(
            @RequestParam String key,
            @RequestParam(defaultValue = "") String value,
            @RequestParam long version,
            HttpServletRequest request) {
        String plain = value.strip();
        boolean takes =
                ClinicSetting.find(key).filter(setting -> setting.takes(plain)).isPresent();
        if (!takes) {
            Notices.put(
                    request,
                    WORDS.get("setting.wrong." + (ClinicSetting.find(key).isPresent() ? key : "unknown")));
            return "redirect:/clinic";
        }
        Saving<Setting> saving = desk.records().clinics().set(key, version, plain, desk.act());
        Notices.put(request, WORDS.get(saving instanceof Saving.Stale ? "stale" : "saved"));
        return "redirect:/clinic";
    }

    private Clinic clinic() {
        return desk.records().clinics().find(Pages.staff().clinicId()).orElseThrow();
    }

    private static List<Mistake> mistakes(Details given) {
        var mistakes = new ArrayList<Mistake>();
        need(mistakes, "name", given.name().strip().matches(".{1,80}"));
        need(mistakes, "kind", KINDS.contains(given.kind()));
        need(mistakes, "phone", given.phone().isBlank() || given.phone().strip().matches("[0-9+() .-]{3,30}"));
        need(mistakes, "emergency", given.emergency().strip().matches("[0-9+() .-]{2,20}"));
        return mistakes;
    }

    private static void need(List<Mistake> mistakes, String field, boolean holds) {
        if (!holds) {
            mistakes.add(new Mistake(0, 0, field, WORDS.get("wrong." + field)));
        }
    }

    private String show(Details details, List<Mistake> mistakes, HttpServletRequest request, Model model) {
        Records records = desk.records();
        Act act = desk.act();
        List<StaffAccount> staff = records.staff().list(act.clinicId());
        Map<String, String> names =
                staff.stream().collect(Collectors.toMap(StaffAccount::id, StaffAccount::displayName));
        model.addAttribute("page", pages.page(request, Area.CLINIC, WORDS.get("title")));
        model.addAttribute("t", WORDS);
        model.addAttribute("form", new FormView(details.fields(), mistakes));
        model.addAttribute("version", details.version());
        model.addAttribute("lead", Pages.staff().roles().contains(Role.LEAD));
        model.addAttribute("staff", staff);
        model.addAttribute("names", names);
        model.addAttribute("teams", records.staff().teams(act.clinicId()));
        model.addAttribute(
                "grants", records.staff().grants(act.clinicId(), act.at().minus(GLASS_SHOWN)));
        List<Setting> settings = settings(act.clinicId());
        model.addAttribute("settings", settings);
        model.addAttribute("backup", BackupAge.of(backups.last(), act.at(), mostDays(settings)));
        mail(act, model);
        model.addAttribute("kinds", options("kind.", KINDS));
        model.addAttribute(
                "roles",
                options(
                        "role.",
                        StaffForm.ROLES.stream().map(ClinicController::lower).toList()));
        model.addAttribute(
                "reaches",
                options(
                        "reach.",
                        List.of(Reach.values()).stream()
                                .map(ClinicController::lower)
                                .toList()));
        return "clinic/clinic";
    }

    private void mail(Act act, Model model) {
        LocalDate since = LocalDate.ofInstant(act.at(), ZoneId.systemDefault()).minusDays(MAIL_DAYS - 1);
        model.addAttribute("sends", work.note(Reminding.NAME).isPresent());
        model.addAttribute("mail", desk.records().reminders().report(act.clinicId(), since));
    }

    private static int mostDays(List<Setting> settings) {
        return settings.stream()
                .filter(setting -> setting.key().equals(ClinicSetting.BACKUP_DAYS.key()))
                .mapToInt(setting -> Integer.parseInt(setting.value()))
                .findFirst()
                .orElseThrow();
    }

    private List<Setting> settings(String clinicId) {
        return List.of(ClinicSetting.values()).stream()
                .map(each -> desk.records().clinics().setting(clinicId, each.key(), each.otherwise()))
                .toList();
    }

    private static String lower(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static List<Option> options(String prefix, List<String> keys) {
        return keys.stream()
                .map(key -> new Option(key, WORDS.get(prefix + key)))
                .toList();
    }
}
