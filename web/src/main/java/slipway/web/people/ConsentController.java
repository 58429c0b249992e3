package slipway.web.people;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.NotThere;
import slipway.care.record.person.Person;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.episode.Desk;
import slipway.web.shell.Notices;

/** Writes down whether a person wants reminders by e-mail. */
@Controller
class ConsentController {
    private static final Words WORDS = Words.beside(ConsentController.class, Language.EN);

    private final Desk desk;

    ConsentController(Desk desk) {
        this.desk = desk;
    }

    @PostMapping("/people/{id}/reminders")
    String set(
            @PathVariable String id,
            @RequestParam(defaultValue = "") String wanted,
            @RequestParam(defaultValue = "") String hour,
            HttpServletRequest request) {
        Person person = desk.records().people().find(id, desk.act()).orElseThrow(() -> new NotThere("person", id));
        Notices.put(request, WORDS.get(said(person, wanted, hour)));
        return "redirect:/people/" + id + "#reminders";
    }

    private String said(Person person, String wanted, String hour) {
        if (wanted.equals("no")) {
            desk.records().reminders().end(person.id(), desk.act());
            return "remind.ended";
        }
        if (!wanted.equals("yes") || !hour.matches("[6-9]|1\\d|2[01]")) {
            return "remind.wrong";
        }
        if (person.details().email().isEmpty()) {
            return "remind.no.address";
        }
        desk.records().reminders().agree(person.id(), Integer.parseInt(hour), desk.act());
        return "remind.agreed";
    }
}
