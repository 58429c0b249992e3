package slipway.web.episode.write;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.Saving;
import slipway.care.record.chart.Chart;
import slipway.care.record.papers.Paper;
import slipway.documents.paper.PaperFrame;
import slipway.documents.paper.PaperJson;
import slipway.documents.paper.PaperText;
import slipway.documents.paper.Signed;
import slipway.web.episode.Desk;
import slipway.web.shell.Notices;
import slipway.web.shell.Pages;
import slipway.web.shell.StaffUser;

/** Signatures and what comes after them. What a role may not sign is refused with status 403. */
@Controller
class SignController {
    private static final int MOST_LETTERS = PaperText.MAX_SENTENCE;

    private final Desk desk;
    private final PaperDesk papers;
    private final PaperController drafts;

    SignController(Desk desk, PaperDesk papers, PaperController drafts) {
        this.desk = desk;
        this.papers = papers;
        this.drafts = drafts;
    }

    /**
     * Signs a draft as it stands in the form. What stands around the text, pictures too, is written into it first, so
     * that the digest is of all that is printed.
     */
    @PostMapping("/episodes/{id}/papers/{paper}/sign")
    @Nullable
    String sign(
            @PathVariable String id,
            @PathVariable String paper,
            @RequestParam long version,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model)
            throws IOException {
        Chart chart = desk.open(id);
        Paper now = PaperController.find(chart, paper);
        PaperText base = PaperController.base(chart, now, version);
        StaffUser user = Pages.staff();
        if (!Signing.maySign(base.kind(), user.roles())) {
            response.sendError(HttpServletResponse.SC_FORBIDDEN);
            return null;
        }
        Edits edits = Edits.read(request.getParameterMap(), base);
        PaperFrame frame = papers.frame(chart, base.kind()).writtenBy(user.name());
        Saving<Paper> fixed = chart.papers().change(paper, version, PaperJson.write(edits.on(base), frame));
        if (fixed instanceof Saving.Saved<Paper> saved) {
            fixed = chart.papers().sign(paper, saved.now().version());
        }
        if (fixed instanceof Saving.Stale<Paper> stale) {
            return drafts.stale(chart, stale.current(), edits, request, response, model);
        }
        Notices.put(request, PaperPages.WORDS.get("signed"));
        return PaperController.open(id, now);
    }

    /** A second signature under the same text. */
    @PostMapping("/episodes/{id}/papers/{paper}/co-sign")
    @Nullable
    String coSign(
            @PathVariable String id,
            @PathVariable String paper,
            HttpServletRequest request,
            HttpServletResponse response)
            throws IOException {
        Chart chart = desk.open(id);
        Paper now = PaperController.find(chart, paper);
        StaffUser user = Pages.staff();
        Signed signed = Signed.of(now);
        if (!Signing.mayCoSign(signed, user.accountId(), user.roles()) || !signed.unaltered()) {
            response.sendError(HttpServletResponse.SC_FORBIDDEN);
            return null;
        }
        chart.papers()
                .amend(
                        paper,
                        Signed.coSignature(signed.signature().orElseThrow().sha256()));
        Notices.put(request, PaperPages.WORDS.get("coSigned"));
        return PaperController.open(id, now);
    }

    /** Adds to a signed paper; its text stays. */
    @PostMapping("/episodes/{id}/papers/{paper}/addenda")
    @Nullable
    String add(
            @PathVariable String id,
            @PathVariable String paper,
            @RequestParam String words,
            HttpServletRequest request,
            HttpServletResponse response)
            throws IOException {
        Chart chart = desk.open(id);
        Paper now = PaperController.find(chart, paper);
        PaperText text = PaperJson.read(now.text());
        if (!Signing.mayAdd(now, text.kind(), Pages.staff().roles())) {
            response.sendError(HttpServletResponse.SC_FORBIDDEN);
            return null;
        }
        String plain = words.strip();
        if (plain.isEmpty() || plain.length() > MOST_LETTERS || Signed.isCoSignature(plain)) {
            Notices.put(request, PaperPages.WORDS.get("addendum.wrong", MOST_LETTERS));
        } else {
            chart.papers().amend(paper, plain);
            Notices.put(request, PaperPages.WORDS.get("added"));
        }
        return PaperController.open(id, now);
    }
}
