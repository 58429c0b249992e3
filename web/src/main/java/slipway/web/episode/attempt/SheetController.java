package slipway.web.episode.attempt;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.NotThere;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.PlanVersion;
import slipway.web.episode.Cases;
import slipway.web.episode.Desk;
import slipway.web.episode.plan.PlanDrafts;

/** One print for the person: the sheet of the plan at home with a new code on it. */
@Controller
class SheetController {
    private final Desk desk;
    private final Cases cases;
    private final Sheets sheets;
    private final PatientCodes codes;

    SheetController(Desk desk, Cases cases, Sheets sheets, PatientCodes codes) {
        this.desk = desk;
        this.cases = cases;
        this.sheets = sheets;
        this.codes = codes;
    }

    @PostMapping("/episodes/{id}/sheet")
    ResponseEntity<byte[]> sheet(
            @PathVariable String id,
            @RequestParam String language,
            @RequestParam String paper,
            @RequestParam String type,
            HttpServletRequest request) {
        Chart chart = desk.open(id);
        PlanVersion plan = chart.plans().released().orElseThrow(() -> new NotThere("plan at home", id));
        Optional<Sheets.Choice> choice = Sheets.Choice.read(language, paper, type);
        List<String> released = TryStep.released(chart, plan);
        if (choice.isEmpty() || released.isEmpty()) {
            throw new NotThere("sheet", id);
        }
        byte[] pdf = sheets.coded(
                chart, plan, PlanDrafts.visit(cases, plan), released, choice.get(), codes.guide(id, plan, request));
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .cacheControl(CacheControl.noStore())
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline()
                                .filename("sheet.pdf")
                                .build()
                                .toString())
                .body(pdf);
    }
}
