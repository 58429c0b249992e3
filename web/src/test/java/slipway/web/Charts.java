package slipway.web;

import java.time.Instant;
import java.util.Map;
import java.util.OptionalInt;
import java.util.UUID;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.caseload.TodayRow;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.care.record.person.PersonDetails;
import slipway.mechanics.body.Side;
import slipway.web.episode.Cases;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Charts of invented people for tests of the pages. */
public final class Charts {
    private Charts() {}

    /** A new episode of the right leg with these sections recorded. */
    public static Chart begin(TestServer server, String name, Map<Section, ObjectNode> sections) {
        Act act = therapist(server);
        String person = server.records().people().add(details(name), act).id();
        return server.records().charts().begin(person, Side.RIGHT, act.userId(), sections, act);
    }

    /** The demo therapist, now. */
    public static Act therapist(TestServer server) {
        StaffAccount account =
                server.records().staff().credentials("therapist").orElseThrow().account();
        return new Act(account.id(), Role.THERAPIST, account.clinicId(), Instant.now());
    }

    /** What is recorded in a section now. */
    public static ObjectNode content(TestServer server, String episodeId, Section section) {
        return open(server, episodeId).section(section).content();
    }

    /** The episode of a person of the demo whose name begins so. */
    public static String demoEpisode(TestServer server, String name) {
        return server.records().caseload().today(200, therapist(server)).stream()
                .filter(row -> row.name().startsWith(name))
                .map(TodayRow::episodeId)
                .findFirst()
                .orElseThrow();
    }

    /** The secret of a new code of an episode, made beside the pages. */
    public static String code(TestServer server, String episodeId, LinkPurpose purpose, Instant expires) {
        return code(server, episodeId, purpose, OptionalInt.empty(), expires, false);
    }

    /** The same, given with some version of the plan, with or without asking for the year of birth. */
    public static String code(
            TestServer server,
            String episodeId,
            LinkPurpose purpose,
            OptionalInt plan,
            Instant expires,
            boolean birthYear) {
        String token = UUID.randomUUID().toString();
        server.records()
                .links()
                .add(episodeId, purpose, plan, Cases.digest(token), expires, birthYear, therapist(server));
        return token;
    }

    /** An episode opened by the demo therapist. */
    public static Chart open(TestServer server, String episodeId) {
        return server.records()
                .charts()
                .open(episodeId, therapist(server))
                .chartIfOpen()
                .orElseThrow();
    }

    public static ObjectNode json(String text) {
        return (ObjectNode) JsonMapper.shared().readTree(text);
    }

    /** A name and nothing else. */
    public static PersonDetails details(String name) {
        return PersonDetails.invented(name);
    }
}
