package slipway.web.today;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.caseload.TodayRow;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.episode.Desk;
import slipway.web.shell.Area;
import slipway.web.shell.Pages;

/** Today. */
@Controller
class TodayController {
    private static final Words WORDS = Words.beside(TodayController.class, Language.EN);
    private static final int MOST = 200;

    private final Desk desk;
    private final Pages pages;

    TodayController(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    @GetMapping("/today")
    String today(@RequestParam(defaultValue = "") String whose, HttpServletRequest request, Model model) {
        Act act = desk.act();
        // A lead looks after everybody, a therapist after her own.
        boolean lead = Pages.staff().roles().contains(Role.LEAD);
        boolean all = whose.isEmpty() ? lead : whose.equals("clinic");
        List<TodayRow> rows = all
                ? desk.records().caseload().today(MOST, act)
                : desk.records().caseload().today(act.userId(), MOST, act);
        List<Need> needs = Need.of(rows, act.at(), WORDS);
        model.addAttribute("page", pages.page(request, Area.TODAY, WORDS.get("title")));
        model.addAttribute("t", WORDS);
        model.addAttribute("all", all);
        model.addAttribute(
                "alerts", rows.stream().filter(row -> row.openAlerts() > 0).toList());
        model.addAttribute("needs", needs);
        long alarmedOnly = rows.stream()
                .filter(row -> row.openAlerts() > 0)
                .filter(row -> needs.stream().noneMatch(need -> need.episodeId().equals(row.episodeId())))
                .count();
        model.addAttribute("steady", (int) (rows.size() - needs.size() - alarmedOnly));
        model.addAttribute("rows", rows);
        List<String> ids = rows.stream().map(TodayRow::episodeId).toList();
        model.addAttribute("papers", PaperDue.of(rows, desk.records().caseload().paperTrails(ids, act), act.at()));
        return "today/today";
    }
}
