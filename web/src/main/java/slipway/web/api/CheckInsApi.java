package slipway.web.api;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;
import slipway.care.record.chart.Chart;
import slipway.care.record.follow.CheckIn;
import slipway.web.episode.Cases;
import slipway.web.episode.home.HomeCourse;
import slipway.web.episode.home.SentReports;
import slipway.web.episode.home.SentReports.Outcome;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Reports from home: those that came, and a new one, answered by the rules. */
@RestController
class CheckInsApi {
    private static final int MOST_BYTES = 20_000;
    /** As on the person's own page: a flood is turned away before anything is computed. */
    private static final int MOST_A_DAY = 40;

    private final ApiDesk desk;
    private final Cases cases;
    private final HomeCourse course;
    private final SentReports reports;

    CheckInsApi(ApiDesk desk, Cases cases, HomeCourse course, SentReports reports) {
        this.desk = desk;
        this.cases = cases;
        this.course = course;
        this.reports = reports;
    }

    @GetMapping("/api/v1/cases/{episode}/check-ins")
    ResponseEntity<byte[]> list(@PathVariable String episode) {
        Chart chart = desk.open(episode);
        var home = course.home(chart);
        ObjectNode answer = JsonMapper.shared().createObjectNode();
        home.ifPresent(given -> answer.put("locked", course.locked(chart, given)));
        ArrayNode list = answer.putArray("checkIns");
        for (CheckIn kept : chart.checkIns().list()) {
            ObjectNode row = list.addObject()
                    .put("id", kept.id())
                    .put("receivedAt", kept.receivedAt().toString());
            row.set("report", kept.body());
            home.flatMap(given -> reports.decision(chart, given, kept.id()))
                    .ifPresent(result -> row.set("decision", JsonMapper.shared().valueToTree(result)));
        }
        return Json.ok(answer);
    }

    @PostMapping("/api/v1/cases/{episode}/check-ins")
    ResponseEntity<byte[]> add(@PathVariable String episode, HttpServletRequest request) {
        byte[] body = Bodies.read(request, MOST_BYTES, List.of(MediaType.APPLICATION_JSON));
        Chart chart = desk.open(episode);
        HomeCourse.Home home = course.home(chart)
                .orElseThrow(() -> new ProblemException(
                        HttpStatus.CONFLICT, "nothing was given for home yet, so that there is nothing to report on"));
        ObjectNode report = ReportBody.read(body);
        if (!ReportBody.tellsSign(report) && tooMany(chart, report)) {
            throw new ProblemException(
                    HttpStatus.TOO_MANY_REQUESTS,
                    "an episode takes %d reports a day, and any number with a danger sign".formatted(MOST_A_DAY));
        }
        Outcome outcome = reports.take(chart, home, report);
        if (outcome instanceof Outcome.Unreadable unreadable) {
            throw new ProblemException(
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    "the report has mistakes; nothing was kept",
                    ReportBody.inJson(unreadable.mistakes()));
        }
        if (!(outcome instanceof Outcome.Answered answered)) {
            throw new ProblemException(
                    HttpStatus.CONFLICT, "this id was used for another report; a new report needs a new id");
        }
        return Json.made(answered.first(), "/api/v1/cases/" + episode + "/check-ins", answer(chart, home, answered));
    }

    private boolean tooMany(Chart chart, ObjectNode report) {
        Instant since = chart.openedAt().minus(Duration.ofDays(1));
        List<CheckIn> lately = chart.checkIns().list().stream()
                .filter(each -> each.receivedAt().isAfter(since))
                .toList();
        // The same sent again is no flood.
        return lately.size() >= MOST_A_DAY
                && lately.stream()
                        .noneMatch(each ->
                                each.id().equals(report.path("checkin_id").asString("")));
    }

    private ObjectNode answer(Chart chart, HomeCourse.Home home, Outcome.Answered answered) {
        ObjectNode answer = JsonMapper.shared().createObjectNode();
        answer.put("id", answered.checkIn().id())
                .put("receivedAt", answered.checkIn().receivedAt().toString())
                .put("contact", answered.contact().key())
                .put("emergencyNumber", cases.clinic(chart).emergencyNumber())
                .put("locked", course.locked(chart, home));
        answer.putObject("says")
                .put("en", answered.spoken().en())
                .put("es", answered.spoken().es());
        answered.result()
                .ifPresent(result -> answer.set("decision", JsonMapper.shared().valueToTree(result)));
        if (!answered.mistakes().isEmpty()) {
            ReportBody.add(answer.putArray("notRead"), answered.mistakes());
        }
        return answer;
    }
}
