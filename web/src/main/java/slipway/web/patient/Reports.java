package slipway.web.patient;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.PlanVersion;
import slipway.care.record.follow.CheckIn;
import slipway.care.record.follow.Receipt;
import slipway.reasoning.response.propose.RespondResult;
import slipway.reasoning.response.rules.Contact;
import slipway.reasoning.response.rules.Rule;
import slipway.reasoning.response.rules.RuleBook;
import slipway.web.episode.home.HomeCourse;
import slipway.web.patient.PatientDoor.Opened;
import tools.jackson.databind.node.ObjectNode;

/** Keeps reports and finds what the person reads in answer. */
@Component
class Reports {
    /** Nobody reports more often in a day; a flood is turned away before anything is computed. */
    private static final int MOST_A_DAY = 40;
    /** With a danger sign more are kept; beyond that the sign has been told, and the answer is still given. */
    private static final int MOST_WITH_SIGN = 80;

    private static final Duration WORTH_SAYING = Duration.ofHours(1);

    private final HomeCourse course;
    private final Clock clock;

    Reports(HomeCourse course, Clock clock) {
        this.course = course;
        this.clock = clock;
    }

    /**
     * What came of a report.
     *
     * @param id under which it is kept
     * @param spoken the rule whose words the person reads; empty if it is on a plan that was replaced since
     */
    record Answer(String id, Optional<Rule> spoken, Contact contact) {
        boolean emergency() {
            return contact == Contact.EMERGENCY_NUMBER;
        }

        boolean call() {
            return contact == Contact.SAME_DAY || contact == Contact.CALL;
        }
    }

    /** Whether a code has been used so often in a day that it is turned away; a danger sign is taken longer. */
    boolean tooMany(Chart chart, Report report) {
        Instant since = clock.instant().minus(Duration.ofDays(1));
        long today = chart.checkIns().list().stream()
                .filter(each -> each.receivedAt().isAfter(since))
                .count();
        return today >= (report.anySign() ? MOST_WITH_SIGN : MOST_A_DAY);
    }

    /** The report as it would be kept. */
    ObjectNode body(Opened opened, Report report) {
        PlanVersion plan = plan(opened, report);
        Instant given = plan.releasedAt().orElse(plan.madeAt());
        OffsetDateTime here =
                clock.instant().atZone(java.time.ZoneId.systemDefault()).toOffsetDateTime();
        return report.body(PhoneTimes.of(report.times(), clock.instant(), given, here.getOffset()));
    }

    /** The plan that the phone had, if that was ever at home; the one of now otherwise. */
    private static PlanVersion plan(Opened opened, Report report) {
        return report.plan().stream()
                .boxed()
                .flatMap(number -> opened.chart().plans().find(number).stream())
                .filter(plan -> plan.releasedAt().isPresent())
                .findFirst()
                .orElse(opened.home().plan());
    }

    /** Whether a report can be read: on the plan of now by its exercises; on an earlier one it is kept as it is. */
    boolean readable(Opened opened, Report report, ObjectNode body) {
        return plan(opened, report).number() != opened.home().plan().number()
                || HomeCourse.mistakes(body, opened.home()).isEmpty();
    }

    /** Keeps a report, raises an alert if somebody has to speak with the person, and answers it. */
    Answer take(Opened opened, Report report, ObjectNode body) {
        Chart chart = opened.chart();
        String id = keep(chart, report, body);
        Answer answer = answer(opened, report, id);
        if (answer.contact().compareTo(Contact.SAME_DAY) >= 0) {
            String why = answer.spoken().map(Rule::why).orElse("") + late(body);
            String kind = answer.spoken().map(Rule::id).orElse("");
            chart.checkIns()
                    .raise(
                            kind,
                            "Check-in: " + why,
                            Optional.of(id),
                            chart.episode().therapistId());
        }
        return answer;
    }

    /** What is answered to a report that is turned away: the danger sign counts all the same. */
    static Answer unkept(Report report) {
        return report.signRule().map(rule -> ofSign("", rule)).orElseThrow();
    }

    private Answer answer(Opened opened, Report report, String id) {
        if (report.signRule().isPresent()) {
            return ofSign(id, report.signRule().get());
        }
        Optional<RespondResult> result = course.followed(opened.chart(), opened.home()).results().stream()
                .filter(each -> each.checkinId().equals(id))
                .reduce((first, second) -> second);
        return result.map(
                        found -> new Answer(id, Optional.of(RuleBook.bundled().spoken(found.rules())), found.contact()))
                .orElseGet(() -> new Answer(id, Optional.empty(), Contact.NONE));
    }

    private static Answer ofSign(String id, String ruleId) {
        Rule rule = RuleBook.bundled().get(ruleId);
        return new Answer(
                id, Optional.of(rule), ruleId.startsWith("emergency") ? Contact.EMERGENCY_NUMBER : Contact.SAME_DAY);
    }

    private String late(ObjectNode body) {
        Instant made = OffsetDateTime.parse(body.path("reported_at").asString()).toInstant();
        Duration age = Duration.between(made, clock.instant());
        return age.compareTo(WORTH_SAYING) < 0
                ? ""
                : " It was made %d h before it reached the clinic.".formatted(age.toHours());
    }

    /**
     * Keeps a report and tells under which id. The same sent again is kept once; whoever went back and changed the
     * answers sends another report, which gets an id of its own, the same each time that it is sent.
     */
    private static String keep(Chart chart, Report report, ObjectNode body) {
        for (String id : List.of(report.id(), changedId(report.id(), body))) {
            ObjectNode kept = body.deepCopy().put("checkin_id", id);
            Receipt receipt = chart.checkIns().add(id, report.session(), report.exercise(), kept);
            if (!(receipt instanceof Receipt.IdInUse) || sameAnswers(chart, id, kept)) {
                return id;
            }
        }
        String id = UUID.randomUUID().toString();
        chart.checkIns()
                .add(id, report.session(), report.exercise(), body.deepCopy().put("checkin_id", id));
        return id;
    }

    private static boolean sameAnswers(Chart chart, String id, ObjectNode body) {
        return chart.checkIns().list().stream()
                .filter(each -> each.id().equals(id))
                .map(CheckIn::body)
                .anyMatch(kept -> Report.sameAnswers(kept, body));
    }

    private static String changedId(String id, ObjectNode body) {
        String said = id
                + body.path("before")
                + body.path("worst")
                + body.path("kind")
                + body.path("settle_minutes")
                + body.path("next_morning")
                + body.path("still_numb")
                + body.path("new_weakness")
                + body.path("emergency")
                + body.path("reach")
                + body.path("repetitions_done");
        return UUID.nameUUIDFromBytes(said.getBytes(StandardCharsets.UTF_8)).toString();
    }
}
