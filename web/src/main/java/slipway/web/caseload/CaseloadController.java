package slipway.web.caseload;

import jakarta.servlet.http.HttpServletRequest;
import java.security.SecureRandom;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import slipway.care.caseload.CaseloadFigures;
import slipway.care.kept.KeptAnswers;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Clinic;
import slipway.care.record.caseload.OutcomeRow;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.documents.words.Words;
import slipway.exchange.tables.CaseloadArchive;
import slipway.exchange.tables.CaseloadTables;
import slipway.exercises.exercise.Language;
import slipway.web.episode.Desk;
import slipway.web.shell.Area;
import slipway.web.shell.Pages;
import slipway.web.shell.Times;

/** The figures of the caseload, and its tables without names. */
@Controller
class CaseloadController {
    private static final Words WORDS = Words.beside(CaseloadController.class, Language.EN);
    private static final String PAGE = "/clinic/caseload";

    /** Charts are opened one by one for the tables; more than these are for the command line. */
    private static final int MOST_IN_TABLES = 1_000;

    private static final int KEY_BYTES = 32;
    private static final int KEPT = 16;

    private final Desk desk;
    private final Pages pages;
    private final KeptAnswers<String, CaseloadView> drawn = new KeptAnswers<>(KEPT);
    private final SecureRandom random = new SecureRandom();

    CaseloadController(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    @GetMapping(PAGE)
    String caseload(HttpServletRequest request, Model model) {
        Act act = act();
        ZoneId zone = ZoneId.systemDefault();
        var figures = CaseloadFigures.current(desk.records().caseload(), zone, act);
        int episodes = figures.report().episodes();
        model.addAttribute("page", pages.page(request, Area.CLINIC, WORDS.get("title")));
        model.addAttribute("t", WORDS);
        model.addAttribute("view", view(figures, act));
        model.addAttribute("from", CaseloadFigures.from(figures.at(), zone).toString());
        model.addAttribute("at", Times.minute(figures.at()));
        model.addAttribute("fewNow", CaseloadFigures.FEW);
        model.addAttribute("few", episodes <= MOST_IN_TABLES);
        return "caseload/caseload";
    }

    /** Limits of large groups take as long as the rest of the page. */
    private CaseloadView view(CaseloadFigures figures, Act act) {
        return drawn.get(
                act.clinicId() + figures.at(), () -> CaseloadView.of(figures.report(), figures.measure(), WORDS));
    }

    @PostMapping(PAGE)
    String again() {
        CaseloadFigures.workOut(desk.records().caseload(), ZoneId.systemDefault(), act());
        return "redirect:" + PAGE;
    }

    /** A new key for each download, kept by nobody: two downloads cannot be put together by their pseudonyms. */
    @PostMapping(PAGE + "/tables")
    ResponseEntity<byte[]> tables() {
        Act act = act();
        Clinic clinic = desk.records().clinics().find(act.clinicId()).orElseThrow();
        List<String> ids =
                CaseloadFigures.rows(desk.records().caseload(), MOST_IN_TABLES, ZoneId.systemDefault(), act).stream()
                        .map(OutcomeRow::episodeId)
                        .toList();
        var archive = CaseloadArchive.of(desk.records(), clinic, ids, act.at(), ZoneId.systemDefault(), act);
        byte[] key = new byte[KEY_BYTES];
        random.nextBytes(key);
        Map<String, String> files = CaseloadTables.of(archive.facts(), key);
        desk.records().trail().note(Chain.ofClinic(clinic.id()), Action.EXPORT, "caseload", clinic.id(), act);
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType("application/zip"))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename("caseload.zip")
                                .build()
                                .toString())
                .body(CaseloadArchive.zip(files));
    }

    /** Somebody with several roles acts as a lead here: the figures are of all episodes, whatever the reach. */
    private Act act() {
        Act own = desk.act();
        return new Act(own.userId(), Role.LEAD, own.clinicId(), own.at());
    }
}
