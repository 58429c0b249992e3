package slipway.web.episode.screen;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import java.util.OptionalInt;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.Saving;
import slipway.care.record.assembly.Assembly;
import slipway.care.record.assembly.CaseAssembly;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Verdict;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionRecord;
import slipway.care.visit.VisitPlan;
import slipway.documents.letter.LetterPrinter;
import slipway.documents.pdf.Paper;
import slipway.documents.pdf.PdfEngine;
import slipway.documents.visit.LetterOfVisit;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.reasoning.screening.ScreeningRules;
import slipway.web.episode.Cases;
import slipway.web.episode.Desk;
import slipway.web.shell.Notices;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What the screening asks for beyond its form: clearances and the referral letter. */
@Controller
class ScreenController {
    private static final Words WORDS = Words.beside(ScreenController.class, Language.EN);

    /** A body height that the letter never shows; only a plan needs it, and there is none beside a referral letter. */
    private static final int ANY_STATURE_CM = 170;

    private final Desk desk;
    private final Cases cases;
    private final LetterPrinter printer = new LetterPrinter(new PdfEngine());

    ScreenController(Desk desk, Cases cases) {
        this.desk = desk;
        this.cases = cases;
    }

    /** Records that a clinician has looked into a rule and released it. */
    @PostMapping("/episodes/{id}/clearances")
    String clear(
            @PathVariable String id,
            @RequestParam String rule,
            @RequestParam String who,
            @RequestParam String outcome,
            @RequestParam long version,
            HttpServletRequest request) {
        Chart chart = desk.open(id);
        if (who.isBlank()
                || outcome.isBlank()
                || ScreeningRules.load().find(rule).isEmpty()) {
            Notices.put(request, WORDS.get("clear.incomplete"));
            return back(id);
        }
        ObjectNode content = chart.section(Section.SCREENING).content();
        ArrayNode list = content.withArray("/clearances");
        list.addObject()
                .put("rule", rule)
                .put("who", who.strip())
                .put("when", cases.today().toString())
                .put("outcome", outcome.strip());
        Saving<SectionRecord> saving = chart.save(Section.SCREENING, version, content);
        if (saving instanceof Saving.Stale) {
            Notices.put(request, WORDS.get("clear.stale"));
            return back(id);
        }
        chart.decisions()
                .add("screening/" + rule, Verdict.CHANGE, rule, "cleared", who.strip() + ": " + outcome.strip());
        Notices.put(request, WORDS.get("clear.done"));
        return back(id);
    }

    /** The referral letter as PDF; where there is nothing to refer for, back to the screening with a word. */
    @GetMapping("/episodes/{id}/referral.pdf")
    ResponseEntity<byte[]> letter(@PathVariable String id, HttpServletRequest request) {
        Chart chart = desk.open(id);
        ObjectNode tree = cases.tree(chart);
        ObjectNode person = (ObjectNode) tree.path("person");
        if (!person.has("statureCm")) {
            person.put("statureCm", ANY_STATURE_CM);
        }
        Optional<Assembly.Complete> whole = CaseAssembly.of(tree).complete();
        if (whole.isEmpty()) {
            Notices.put(request, WORDS.get(person.has("ageYears") ? "letter.incomplete" : "letter.age"));
            return away(id);
        }
        VisitPlan visit = cases.visit(whole.get());
        if (!LetterOfVisit.needed(visit)) {
            Notices.put(request, WORDS.get("letter.none"));
            return away(id);
        }
        byte[] pdf = printer.print(LetterOfVisit.of(visit, Language.EN, cases.today()), Paper.A4)
                .pdf();
        chart.documents().add("referral-letter", "application/pdf", pdf, OptionalInt.empty());
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline()
                                .filename("referral.pdf")
                                .build()
                                .toString())
                .body(pdf);
    }

    private static ResponseEntity<byte[]> away(String id) {
        return ResponseEntity.status(303)
                .header(HttpHeaders.LOCATION, "/episodes/" + id + "/screen")
                .build();
    }

    private static String back(String id) {
        return "redirect:/episodes/" + id + "/screen";
    }
}
