package slipway.web.episode.attempt;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.NotThere;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.PlanState;
import slipway.care.record.chart.PlanVersion;
import slipway.care.record.chart.TryEntry;
import slipway.care.record.papers.StoredDocument;
import slipway.care.visit.VisitPlan;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.episode.Cases;
import slipway.web.episode.Desk;
import slipway.web.episode.Heads;
import slipway.web.episode.plan.PlanDrafts;
import slipway.web.shell.Notices;

/** Records tries, releases the plan, hands out the sheet. */
@Controller
class TryController {
    private static final Words WORDS = Words.beside(TryController.class, Language.EN);

    private final Desk desk;
    private final Cases cases;
    private final Sheets sheets;

    TryController(Desk desk, Cases cases, Sheets sheets) {
        this.desk = desk;
        this.cases = cases;
        this.sheets = sheets;
    }

    @PostMapping("/episodes/{id}/tries")
    String record(
            @PathVariable String id,
            @RequestParam String exercise,
            @RequestParam String repetitions,
            @RequestParam String worst,
            @RequestParam(defaultValue = "") String settleMinutes,
            @RequestParam(defaultValue = "") String retestOnsetDeg,
            @RequestParam(defaultValue = "") String weaker,
            @RequestParam(defaultValue = "") String remark,
            @RequestParam(defaultValue = "") String release,
            HttpServletRequest request) {
        Chart chart = desk.open(id);
        PlanVersion plan = TryStep.tried(chart).orElseThrow(() -> new NotThere("accepted plan", id));
        var mistakes = new ArrayList<String>();
        OptionalDouble done = within("repetitions", repetitions, 0, 100, mistakes);
        OptionalDouble felt = within("worst", worst, 0, 10, mistakes);
        OptionalDouble settle = within("settle", settleMinutes, 0, 1440, mistakes);
        OptionalDouble onset = within("onset", retestOnsetDeg, -180, 180, mistakes);
        boolean home = release.equals("yes");
        if (done.isEmpty() || felt.isEmpty()) {
            mistakes.add(WORDS.get("wrong.needed"));
        }
        if (home && (settle.isEmpty() || settle.getAsDouble() > TryStep.settleLimitMinutes())) {
            mistakes.add(WORDS.get("wrong.settle", Math.round(TryStep.settleLimitMinutes())));
        }
        if (home && weaker.equals("yes")) {
            mistakes.add(WORDS.get("wrong.weaker"));
        }
        if (!mistakes.isEmpty()) {
            Notices.put(request, WORDS.get("wrong", String.join("; ", mistakes)));
            return back(id);
        }
        var entry = new TryEntry(
                exercise,
                (int) done.getAsDouble(),
                felt.getAsDouble(),
                settle,
                onset,
                weaker.isEmpty() ? Optional.empty() : Optional.of(weaker.equals("yes")),
                home,
                remark.isBlank() ? Optional.empty() : Optional.of(remark.strip()));
        chart.visits().addTry(Heads.visit(chart).id(), plan.number(), entry);
        Notices.put(request, WORDS.get(home ? "recorded.home" : "recorded"));
        return back(id);
    }

    /** Gives the plan to the person: the sheet is made and kept, the plan before it is replaced. */
    @PostMapping("/episodes/{id}/release")
    String release(
            @PathVariable String id,
            @RequestParam String language,
            @RequestParam String paper,
            @RequestParam String type,
            HttpServletRequest request) {
        Chart chart = desk.open(id);
        PlanVersion plan = TryStep.tried(chart).orElseThrow(() -> new NotThere("accepted plan", id));
        List<String> released = TryStep.released(chart, plan);
        Optional<Sheets.Choice> choice = Sheets.Choice.read(language, paper, type);
        if (released.isEmpty() || choice.isEmpty()) {
            Notices.put(request, WORDS.get("release.none"));
            return back(id);
        }
        VisitPlan visit = PlanDrafts.visit(cases, plan);
        if (plan.state() == PlanState.ACCEPTED) {
            chart.plans().move(plan.number(), PlanState.ACCEPTED, PlanState.RELEASED);
        }
        sheets.make(chart, plan, visit, released, choice.get());
        Notices.put(request, WORDS.get("release.done", plan.number()));
        return "redirect:/episodes/" + id + "/try";
    }

    /** A kept document. */
    @GetMapping("/episodes/{id}/documents/{document}")
    ResponseEntity<byte[]> document(@PathVariable String id, @PathVariable String document) {
        Chart chart = desk.open(id);
        StoredDocument kept = chart.documents().find(document).orElseThrow(() -> new NotThere("document", document));
        byte[] bytes = chart.documents().bytes(document).orElseThrow(() -> new NotThere("document", document));
        String name = kept.kind() + (kept.mediaType().endsWith("pdf") ? ".pdf" : ".html");
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(kept.mediaType()))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline().filename(name).build().toString())
                .body(bytes);
    }

    private static OptionalDouble within(String field, String text, double low, double high, List<String> mistakes) {
        if (text.isBlank()) {
            return OptionalDouble.empty();
        }
        try {
            double value = Double.parseDouble(text.strip().replace(',', '.'));
            if (value >= low && value <= high) {
                return OptionalDouble.of(value);
            }
        } catch (NumberFormatException e) {
            // Said below, the same as for what is out of range.
        }
        mistakes.add(WORDS.get("wrong.within", WORDS.get("field." + field), low, high, text));
        return OptionalDouble.empty();
    }

    private static String back(String id) {
        return "redirect:/episodes/" + id + "/try";
    }
}
