package slipway.web.episode.write;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.NotThere;
import slipway.care.record.Saving;
import slipway.care.record.assembly.Assembly;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.VisitRecord;
import slipway.care.record.papers.Paper;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.documents.paper.PaperDiff;
import slipway.documents.paper.PaperJson;
import slipway.documents.paper.PaperKind;
import slipway.documents.paper.PaperText;
import slipway.documents.paper.PaperWriter;
import slipway.documents.paper.Redraft;
import slipway.web.episode.Cases;
import slipway.web.episode.Desk;
import slipway.web.shell.Notices;

/** Drafts of papers: begun, edited, brought up to date, compared, printed. */
@Controller
class PaperController {
    private final Desk desk;
    private final Cases cases;
    private final PaperDesk papers;
    private final PaperPages pages;

    PaperController(Desk desk, Cases cases, PaperDesk papers, PaperPages pages) {
        this.desk = desk;
        this.cases = cases;
        this.papers = papers;
        this.pages = pages;
    }

    /** Begins a draft; an open draft of the same kind and day is opened instead. */
    @PostMapping("/episodes/{id}/papers")
    String begin(@PathVariable String id, @RequestParam String kind, HttpServletRequest request) {
        Chart chart = desk.open(id);
        PaperKind wanted = PaperKind.find(kind).orElseThrow(() -> new NotThere("kind of paper", kind));
        Optional<Assembly.Complete> whole = cases.assemble(chart).complete();
        if (whole.isEmpty()) {
            Notices.put(request, PaperPages.WORDS.get("incomplete"));
            return "redirect:/episodes/" + id + "/write";
        }
        try {
            PaperText text = PaperWriter.write(wanted, papers.input(chart, whole.get(), wanted));
            return open(
                    id,
                    unfinished(chart, text)
                            .orElseGet(() -> chart.papers().draft(kind, visit(chart, wanted), PaperJson.write(text))));
        } catch (IllegalArgumentException e) {
            Notices.put(request, PaperPages.WORDS.get("refused", String.valueOf(e.getMessage())));
            return "redirect:/episodes/" + id + "/write";
        }
    }

    private static Optional<Paper> unfinished(Chart chart, PaperText text) {
        return chart.papers().list().stream()
                .filter(paper -> paper.signature().isEmpty())
                .filter(paper -> paper.kind().equals(text.kind().key()))
                .filter(paper -> PaperJson.read(paper.text()).day().equals(text.day()))
                .findFirst();
    }

    /** A note is of the last visit. */
    private static Optional<String> visit(Chart chart, PaperKind kind) {
        return kind == PaperKind.VISIT_NOTE
                ? chart.visits().list().stream()
                        .reduce((first, second) -> second)
                        .map(VisitRecord::id)
                : Optional.empty();
    }

    @GetMapping("/episodes/{id}/papers/{paper}")
    String show(@PathVariable String id, @PathVariable String paper, HttpServletRequest request, Model model) {
        Chart chart = desk.open(id);
        return pages.paper(chart, find(chart, paper), request, model);
    }

    /** Saves what was edited; if somebody else saved meanwhile, both are shown and nothing is written. */
    @PostMapping("/episodes/{id}/papers/{paper}")
    String save(
            @PathVariable String id,
            @PathVariable String paper,
            @RequestParam long version,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Chart chart = desk.open(id);
        Paper now = find(chart, paper);
        PaperText base = base(chart, now, version);
        Edits edits = Edits.read(request.getParameterMap(), base);
        if (edits.tooLong()) {
            Notices.put(request, PaperPages.WORDS.get("long", PaperText.MAX_SENTENCE));
            return open(id, now);
        }
        if (edits.isEmpty()) {
            Notices.put(request, PaperPages.WORDS.get("nothing"));
            return open(id, now);
        }
        Saving<Paper> saving = saved(chart, now, version, edits.on(base));
        if (saving instanceof Saving.Stale<Paper> stale) {
            return stale(chart, stale.current(), edits, request, response, model);
        }
        Notices.put(request, PaperPages.WORDS.get("saved"));
        return open(id, now);
    }

    private static Saving<Paper> saved(Chart chart, Paper paper, long version, PaperText text) {
        return chart.papers().change(paper.id(), version, PaperJson.write(text));
    }

    /** The text of the version that a form was opened on. */
    static PaperText base(Chart chart, Paper now, long version) {
        String text = now.version() == version
                ? now.text()
                : chart.papers().texts(now.id()).stream()
                        .filter(each -> each.version() == version)
                        .findFirst()
                        .orElseThrow(() -> new NotThere("version of the paper", String.valueOf(version)))
                        .text();
        return PaperJson.read(text);
    }

    String stale(
            Chart chart,
            Paper current,
            Edits edits,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        response.setStatus(HttpStatus.CONFLICT.value());
        var view = pages.frame(chart, current, request, model);
        model.addAttribute("by", papers.names(chart).apply(current.changedBy()));
        model.addAttribute("form", StaleForm.of(edits, view.text()));
        return "episode/paper-stale";
    }

    /** Puts the paper together again from the record of now; what a person wrote or changed stays. */
    @PostMapping("/episodes/{id}/papers/{paper}/renew")
    String renew(
            @PathVariable String id,
            @PathVariable String paper,
            @RequestParam long version,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Chart chart = desk.open(id);
        Paper now = find(chart, paper);
        PaperText base = base(chart, now, version);
        PaperText edited = Edits.read(request.getParameterMap(), base).on(base);
        Assembly.Complete whole = cases.assemble(chart).complete().orElseThrow(() -> new NotThere("whole case", id));
        Redraft.Result fresh =
                Redraft.of(edited, PaperWriter.write(base.kind(), papers.input(chart, whole, base.kind())));
        Saving<Paper> saving = saved(chart, now, version, fresh.text());
        if (saving instanceof Saving.Stale<Paper> stale) {
            return stale(chart, stale.current(), Edits.read(request.getParameterMap(), base), request, response, model);
        }
        Notices.put(
                request,
                fresh.changedBelow().isEmpty()
                        ? PaperPages.WORDS.get("renewed")
                        : PaperPages.WORDS.counted(
                                "renewed.look", fresh.changedBelow().size()));
        return open(id, now);
    }

    /** Two versions side by side. */
    @GetMapping("/episodes/{id}/papers/{paper}/compare")
    String compare(
            @PathVariable String id,
            @PathVariable String paper,
            @RequestParam long from,
            @RequestParam long to,
            HttpServletRequest request,
            Model model) {
        Chart chart = desk.open(id);
        Paper now = find(chart, paper);
        pages.frame(chart, now, request, model);
        List<PaperVersion> versions = pages.versions(chart, now);
        model.addAttribute("versions", versions);
        model.addAttribute("from", from);
        model.addAttribute("to", to);
        model.addAttribute("diff", PaperDiff.of(base(chart, now, from), base(chart, now, to)));
        return "episode/paper-compare";
    }

    @GetMapping("/episodes/{id}/papers/{paper}/paper.pdf")
    ResponseEntity<byte[]> pdf(@PathVariable String id, @PathVariable String paper) {
        Chart chart = desk.open(id);
        Paper kept = find(chart, paper);
        byte[] pdf = papers.pdf(chart, kept);
        desk.records().trail().note(Chain.ofPerson(chart.person().id()), Action.PRINT, "paper", kept.id(), desk.act());
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline()
                                .filename(kept.kind() + ".pdf")
                                .build()
                                .toString())
                .body(pdf);
    }

    static Paper find(Chart chart, String paperId) {
        return chart.papers().find(paperId).orElseThrow(() -> new NotThere("paper", paperId));
    }

    static String open(String id, Paper paper) {
        return "redirect:/episodes/" + id + "/papers/" + paper.id();
    }
}
