package slipway.web.today;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.caseload.TodayRow;
import slipway.care.record.follow.Alert;
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
        List<Need> needs = Need.of(rows, WORDS);
        model.addAttribute("page", pages.page(request, Area.TODAY, WORDS.get("title")));
        model.addAttribute("t", WORDS);
        model.addAttribute("all", all);
        model.addAttribute("alerts", standing(rows, act));
        List<Silent> silent = Silent.of(rows, act.at());
        model.addAttribute("silent", silent);
        model.addAttribute("needs", needs);
        long alarmedOnly = rows.stream()
                .filter(row -> row.openAlerts() > 0)
                .filter(row -> needs.stream().noneMatch(need -> need.episodeId().equals(row.episodeId())))
                .count();
        model.addAttribute("steady", (int) (rows.size() - needs.size() - alarmedOnly - silent.size()));
        model.addAttribute("rows", rows);
        List<String> ids = rows.stream().map(TodayRow::episodeId).toList();
        model.addAttribute("papers", PaperDue.of(rows, desk.records().caseload().paperTrails(ids, act), act.at()));
        return "today/today";
    }

    private List<Standing> standing(List<TodayRow> rows, Act act) {
        List<Alert> open = desk.records().alerts().open(act.clinicId());
        if (open.isEmpty()) {
            return List.of();
        }
        Map<String, String> names = desk.records().staff().list(act.clinicId()).stream()
                .collect(Collectors.toMap(StaffAccount::id, StaffAccount::displayName, (one, other) -> one));
        // An alert that was handed on may be about somebody who is not among those shown.
        List<TodayRow> reach = desk.records().caseload().today(MOST, act);
        return Standing.of(open, rows, reach, act.userId(), names, new Standing.Now(act.at(), WORDS));
    }
}
