package slipway.web.episode.write;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import slipway.care.record.Role;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.chart.Chart;
import slipway.care.record.papers.Paper;
import slipway.documents.paper.PaperJson;
import slipway.documents.paper.PaperText;
import slipway.documents.paper.PaperWriter;
import slipway.documents.paper.Sentence;
import slipway.documents.paper.Signed;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.episode.Desk;
import slipway.web.episode.EpisodeHead;
import slipway.web.episode.Heads;
import slipway.web.shell.Area;
import slipway.web.shell.Pages;
import slipway.web.shell.StaffUser;
import slipway.web.shell.Times;

/** Fills the pages of one paper. */
@Component
class PaperPages {
    static final Words WORDS = Words.beside(PaperPages.class, Language.EN);

    private final PaperDesk papers;
    private final Desk desk;
    private final Heads heads;
    private final Pages pages;

    PaperPages(PaperDesk papers, Desk desk, Heads heads, Pages pages) {
        this.papers = papers;
        this.desk = desk;
        this.heads = heads;
        this.pages = pages;
    }

    /** The page of a paper, to edit if it is a draft. */
    String paper(Chart chart, Paper paper, HttpServletRequest request, Model model) {
        PaperView view = frame(chart, paper, request, model);
        model.addAttribute("versions", versions(chart, paper));
        model.addAttribute(
                "codeProblems",
                papers.codeProblems(chart, codes(view.text()), view.text().day()));
        model.addAttribute("may", may(chart, view));
        return paper.signature().isEmpty() ? "episode/paper-draft" : "episode/paper-signed";
    }

    /** The diagnosis codes that a paper holds: the ids of their sentences end with them. */
    private static List<String> codes(PaperText text) {
        return text.sentences().stream()
                .filter(sentence -> sentence.sources().contains("episode/diagnoses"))
                .map(sentence -> sentence.id().substring(sentence.id().indexOf('/') + 1))
                .filter(code -> code.matches("[A-Z][0-9].*"))
                .toList();
    }

    /** What the pages of a paper have in common. */
    PaperView frame(Chart chart, Paper paper, HttpServletRequest request, Model model) {
        EpisodeHead head = heads.of(chart);
        PaperText text = PaperJson.read(paper.text());
        model.addAttribute("page", pages.page(request, Area.PEOPLE, text.title() + " · " + head.name()));
        model.addAttribute("head", head);
        model.addAttribute("t", WORDS);
        var number = new HashMap<String, Integer>();
        var sources = new HashMap<String, List<Source>>();
        for (Sentence sentence : text.sentences()) {
            number.put(sentence.id(), number.size() + 1);
            sources.put(sentence.id(), Source.of(sentence.sources(), head));
        }
        var view = new PaperView(
                paper,
                text,
                Signed.of(paper).named(papers.names(chart)),
                number,
                sources,
                PaperWriter.reviewed(text.language()));
        model.addAttribute("view", view);
        return view;
    }

    private May may(Chart chart, PaperView view) {
        StaffUser user = Pages.staff();
        Signed signed = Signed.of(view.paper());
        Set<Role> signer = signed.signature()
                .flatMap(by -> desk.records().staff().list(chart.episode().clinicId()).stream()
                        .filter(account -> account.id().equals(by.by()))
                        .findFirst())
                .map(StaffAccount::roles)
                .orElse(Set.of());
        return new May(
                Signing.maySign(view.text().kind(), user.roles()),
                Signing.mayCoSign(signed, user.accountId(), user.roles()),
                Signing.mayAdd(view.paper(), view.text().kind(), user.roles()),
                Signing.waits(signed, signer));
    }

    /** The versions whose words differ from the one before, oldest first. */
    List<PaperVersion> versions(Chart chart, Paper paper) {
        UnaryOperator<String> names = papers.names(chart);
        var versions = new ArrayList<PaperVersion>();
        Optional<PaperText> before = Optional.empty();
        for (Paper.Text each : chart.papers().texts(paper.id())) {
            PaperText now = PaperJson.read(each.text());
            if (before.filter(now::equals).isEmpty()) {
                versions.add(new PaperVersion(each.version(), Times.minute(each.at()), names.apply(each.by())));
            }
            before = Optional.of(now);
        }
        return versions;
    }
}
