package slipway.web.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.http.HttpStatus;
import slipway.care.record.Act;
import slipway.care.record.caseload.PersonRow;
import slipway.care.record.chart.Episode;
import slipway.care.record.person.PersonDetails;
import slipway.exercises.yaml.Mistake;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Pages of the list of cases: people by name, with their episodes. */
final class CaseList {
    private static final int LONGEST_KEY = 400;

    private static final Mistake AFTER = new Mistake(0, 0, "after", "must be what \"next\" of the page before said");

    private final ApiDesk desk;

    CaseList(ApiDesk desk) {
        this.desk = desk;
    }

    /**
     * One page.
     *
     * @param limit people, as text
     * @throws ProblemException 400 naming every value that cannot be used
     */
    ObjectNode page(String name, String after, String limit) {
        check(name, after, limit);
        int most = Integer.parseInt(limit);
        Act act = desk.act();
        List<PersonRow> people = people(name, after, most, act);
        ObjectNode answer = JsonMapper.shared().createObjectNode();
        ArrayNode list = answer.putArray("cases");
        for (PersonRow person : people) {
            for (Episode episode : desk.records().charts().ofPerson(person.personId(), act)) {
                list.addObject()
                        .put("episode", episode.id())
                        .put("person", episode.personId())
                        .put("name", person.name())
                        .put("side", word(episode.side()))
                        .put("state", word(episode.state()))
                        .put("openedAt", episode.openedAt().toString());
            }
        }
        if (people.size() == most) {
            answer.put("next", people.get(most - 1).afterKey());
        }
        return answer;
    }

    private List<PersonRow> people(String name, String after, int most, Act act) {
        try {
            return desk.records().caseload().people(name, after, most, act);
        } catch (IllegalArgumentException e) {
            throw new ProblemException(HttpStatus.BAD_REQUEST, "the query has mistakes", List.of(AFTER));
        }
    }

    private static void check(String name, String after, String limit) {
        var mistakes = new ArrayList<Mistake>();
        if (name.length() > PersonDetails.MAX_NAME) {
            mistakes.add(
                    new Mistake(0, 0, "name", "must have at most %d characters".formatted(PersonDetails.MAX_NAME)));
        }
        if (after.length() > LONGEST_KEY) {
            mistakes.add(AFTER);
        }
        if (!limit.matches("[1-9]\\d?|100")) {
            mistakes.add(new Mistake(0, 0, "limit", "must be a whole number within 1 and 100"));
        }
        if (!mistakes.isEmpty()) {
            throw new ProblemException(HttpStatus.BAD_REQUEST, "the query has mistakes", mistakes);
        }
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
