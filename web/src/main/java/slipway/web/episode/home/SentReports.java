package slipway.web.episode.home;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.stereotype.Component;
import slipway.care.record.chart.Chart;
import slipway.care.record.follow.CheckIn;
import slipway.care.record.follow.Receipt;
import slipway.exercises.yaml.Mistake;
import slipway.reasoning.response.propose.RespondResult;
import slipway.reasoning.response.rules.Contact;
import slipway.reasoning.response.rules.Rule;
import slipway.reasoning.response.rules.RuleBook;
import tools.jackson.databind.node.ObjectNode;

/**
 * Keeps a report that another program sends for a person at home, and answers it; raises an alert if somebody has to
 * speak with the person today.
 */
@Component
public class SentReports {
    private final HomeCourse course;

    SentReports(HomeCourse course) {
        this.course = course;
    }

    /** What came of a report. */
    public sealed interface Outcome {
        /** It cannot be read, and tells no danger sign: nothing was kept. */
        record Unreadable(List<Mistake> mistakes) implements Outcome {}

        /** Its id was used for another report: nothing was kept. */
        record IdInUse() implements Outcome {}

        /**
         * It is kept.
         *
         * @param first whether it came now for the first time
         * @param spoken the rule whose words the person reads
         * @param result the decision; empty if only a danger sign could be read
         * @param mistakes what could not be read beside the danger sign
         */
        record Answered(
                CheckIn checkIn,
                boolean first,
                Rule spoken,
                Contact contact,
                Optional<RespondResult> result,
                List<Mistake> mistakes)
                implements Outcome {}
    }

    /**
     * Takes a report under the names of the file of reports, with an id that may stand. A danger sign is kept and
     * answered whatever else is wrong with the report.
     */
    public Outcome take(Chart chart, HomeCourse.Home home, ObjectNode body) {
        List<Mistake> mistakes = HomeCourse.mistakes(body, home);
        Optional<Rule> sign = sign(body);
        if (!mistakes.isEmpty() && sign.isEmpty()) {
            return new Outcome.Unreadable(mistakes);
        }
        String id = body.path("checkin_id").asString("");
        Receipt receipt = chart.checkIns()
                .add(
                        id,
                        body.path("session_id").asString(id),
                        body.path("exercise").asString(""),
                        body);
        if (receipt instanceof Receipt.IdInUse) {
            // A danger sign is never lost for its id.
            return sign.isPresent() ? take(chart, home, withNewId(body)) : new Outcome.IdInUse();
        }
        boolean first = receipt instanceof Receipt.Taken;
        CheckIn checkIn =
                receipt instanceof Receipt.Taken taken ? taken.checkIn() : ((Receipt.Again) receipt).checkIn();
        Optional<RespondResult> result = decision(chart, home, id);
        Rule spoken = result.map(found -> RuleBook.bundled().spoken(found.rules()))
                .or(() -> sign)
                .orElseThrow();
        Contact contact = result.map(RespondResult::contact).orElseGet(() -> contact(spoken));
        if (contact == Contact.SAME_DAY || contact == Contact.EMERGENCY_NUMBER) {
            chart.checkIns()
                    .raise(
                            spoken.id(),
                            "Check-in: " + spoken.why(),
                            Optional.of(id),
                            chart.episode().therapistId());
        }
        return new Outcome.Answered(checkIn, first, spoken, contact, result, mistakes);
    }

    private static ObjectNode withNewId(ObjectNode body) {
        String id = UUID.randomUUID().toString();
        return body.deepCopy().put("checkin_id", id).put("session_id", id);
    }

    /** The decision on a report; empty if it is on another plan or cannot be read. */
    public Optional<RespondResult> decision(Chart chart, HomeCourse.Home home, String checkInId) {
        return course.followed(chart, home).results().stream()
                .filter(each -> each.checkinId().equals(checkInId))
                .reduce((first, second) -> second);
    }

    /** For a sign in a report that cannot be read. */
    private static Contact contact(Rule sign) {
        return sign.id().equals("emergency") ? Contact.EMERGENCY_NUMBER : Contact.SAME_DAY;
    }

    /** The rule of the gravest danger sign that a report tells. Anything but a clear no counts as a sign. */
    private static Optional<Rule> sign(ObjectNode body) {
        if (tells(body, "emergency")) {
            return Optional.of(RuleBook.bundled().get("emergency"));
        }
        if (tells(body, "new_weakness")) {
            return Optional.of(RuleBook.bundled().get("new-weakness"));
        }
        return tells(body, "still_numb") ? Optional.of(RuleBook.bundled().get("still-numb")) : Optional.empty();
    }

    private static boolean tells(ObjectNode body, String sign) {
        String word = body.path(sign).asString("").strip();
        return !word.isEmpty() && !word.equals("no");
    }
}
