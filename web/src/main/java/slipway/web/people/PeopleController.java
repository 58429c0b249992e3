package slipway.web.people;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.Role;
import slipway.care.record.Saving;
import slipway.care.record.caseload.PersonRow;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.care.record.person.Person;
import slipway.care.record.person.PersonDetails;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.exercises.yaml.Mistake;
import slipway.mechanics.body.Side;
import slipway.store.work.SharedWork;
import slipway.web.WebOptions;
import slipway.web.episode.Desk;
import slipway.web.form.FormView;
import slipway.web.form.Option;
import slipway.web.remind.Reminding;
import slipway.web.shell.Area;
import slipway.web.shell.Notices;
import slipway.web.shell.Pages;
import tools.jackson.databind.node.ObjectNode;

/** People: the list, a new one, one with episodes. */
@Controller
class PeopleController {
    private static final Words WORDS = Words.beside(PeopleController.class, Language.EN);
    private static final int PAGE = 40;

    private final Desk desk;
    private final Pages pages;
    private final WebOptions options;
    private final SharedWork work;

    PeopleController(Desk desk, Pages pages, WebOptions options, SharedWork work) {
        this.desk = desk;
        this.pages = pages;
        this.options = options;
        this.work = work;
    }

    @GetMapping("/people")
    String list(
            @RequestParam(defaultValue = "") String name,
            @RequestParam(defaultValue = "") String after,
            HttpServletRequest request,
            Model model) {
        List<PersonRow> rows = desk.records().caseload().people(name.strip(), after, PAGE + 1, desk.act());
        model.addAttribute("page", pages.page(request, Area.PEOPLE, WORDS.get("title")));
        model.addAttribute("t", WORDS);
        model.addAttribute("name", name);
        model.addAttribute("rows", rows.subList(0, Math.min(PAGE, rows.size())));
        model.addAttribute(
                "after", rows.size() > PAGE ? Optional.of(rows.get(PAGE - 1).afterKey()) : Optional.empty());
        model.addAttribute("today", PersonForm.today(desk.clock()));
        return request.getHeader("HX-Request") == null ? "people/list" : "people/rows";
    }

    @GetMapping("/people/new")
    String blank(@RequestParam(defaultValue = "") String name, HttpServletRequest request, Model model) {
        var form = new PersonForm(name, "", "", "", "", "", "en", "", "");
        return form(form, List.of(), Optional.empty(), request, model);
    }

    @PostMapping("/people")
    String add(@ModelAttribute PersonForm form, HttpServletRequest request, HttpServletResponse response, Model model) {
        PersonForm.Reading reading = form.read(units(), WORDS, PersonForm.today(desk.clock()), options.demo());
        if (reading.details().isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return form(form, reading.mistakes(), Optional.empty(), request, model);
        }
        Person added = desk.records().people().add(reading.details().get(), desk.act());
        Notices.put(request, WORDS.get("added"));
        return "redirect:/people/" + added.id();
    }

    @GetMapping("/people/{id}")
    String person(@PathVariable String id, HttpServletRequest request, Model model) {
        Person person = find(id);
        return form(PersonForm.of(person.details(), units()), List.of(), Optional.of(person), request, model);
    }

    @PostMapping("/people/{id}")
    String change(
            @PathVariable String id,
            @RequestParam long version,
            @ModelAttribute PersonForm form,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Person person = find(id);
        PersonForm.Reading reading = form.read(
                units(), WORDS, PersonForm.today(desk.clock()), person.details().invented());
        if (reading.details().isEmpty()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return form(form, reading.mistakes(), Optional.of(person), request, model);
        }
        Saving<Person> saving =
                desk.records().people().change(id, version, reading.details().get(), desk.act());
        if (saving instanceof Saving.Stale<Person> stale) {
            response.setStatus(HttpStatus.CONFLICT.value());
            var told = new Mistake(0, 0, "", WORDS.get("stale"));
            return form(form, List.of(told), Optional.of(stale.current()), request, model);
        }
        Notices.put(request, WORDS.get("saved"));
        return "redirect:/people/" + id;
    }

    @PostMapping("/people/{id}/episodes")
    String begin(
            @PathVariable String id,
            @RequestParam String side,
            @RequestParam(defaultValue = "") String first,
            HttpServletRequest request) {
        if (!side.equals("left") && !side.equals("right")) {
            Notices.put(request, WORDS.get("wrong.side"));
            return "redirect:/people/" + id;
        }
        Person person = find(id);
        Act act = desk.act();
        Chart chart = desk.records()
                .charts()
                .begin(
                        person.id(),
                        Side.valueOf(side.toUpperCase(Locale.ROOT)),
                        act.userId(),
                        new EnumMap<Section, ObjectNode>(Section.class),
                        act);
        // With questions by phone first, the visit begins when the person comes.
        if (!first.equals("phone")) {
            chart.visits().start();
        }
        return "redirect:/episodes/" + chart.episode().id() + "/history";
    }

    private Person find(String id) {
        return desk.records().people().find(id, desk.act()).orElseThrow(() -> new NotThere("person", id));
    }

    private Units units() {
        String set = desk.records()
                .clinics()
                .setting(Pages.staff().clinicId(), "units", "metric")
                .value();
        return set.equals("customary") ? Units.CUSTOMARY : Units.METRIC;
    }

    private String form(
            PersonForm form, List<Mistake> mistakes, Optional<Person> person, HttpServletRequest request, Model model) {
        String title = person.map(known -> known.details().name()).orElseGet(() -> WORDS.get("new.title"));
        model.addAttribute("page", pages.page(request, Area.PEOPLE, title));
        model.addAttribute("t", WORDS);
        model.addAttribute("form", new FormView(form.fields(), mistakes));
        model.addAttribute("person", person);
        model.addAttribute("units", units());
        model.addAttribute("lead", Pages.staff().roles().contains(Role.LEAD));
        model.addAttribute("reminders", person.map(this::reminders));
        model.addAttribute("sexes", options("sex", PersonDetailsWords.SEXES));
        model.addAttribute("languages", options("language", PersonDetailsWords.LANGUAGES));
        model.addAttribute(
                "episodes",
                person.map(known -> desk.records().charts().ofPerson(known.id(), desk.act()))
                        .orElse(List.of()));
        return "people/person";
    }

    private RemindersView reminders(Person person) {
        return RemindersView.of(
                person,
                desk.records().reminders().consent(person.id(), desk.act()),
                work.note(Reminding.NAME).isPresent());
    }

    private static List<Option> options(String field, List<String> values) {
        return values.stream()
                .map(value -> new Option(value, WORDS.get(field + "." + value)))
                .toList();
    }

    /** Words that {@link PersonDetails} takes. */
    private static final class PersonDetailsWords {
        private static final List<String> SEXES = List.of("female", "male", "other");
        private static final List<String> LANGUAGES = List.of("en", "es");
    }
}
