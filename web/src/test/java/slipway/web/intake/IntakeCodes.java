package slipway.web.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Map;
import slipway.care.record.access.LinkPurpose;
import slipway.mechanics.body.Side;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;

/** Codes for the questions by phone, on one server. */
final class IntakeCodes {
    private final TestServer server;
    private final Visitor therapist;

    IntakeCodes(TestServer server) {
        this.server = server;
        therapist = server.signedIn("therapist");
    }

    Visitor therapist() {
        return therapist;
    }

    /** Somebody new with an open episode and no visit yet. */
    String episode(String name) {
        var act = Charts.therapist(server);
        var person = server.records().people().add(Charts.details(name), act);
        return server.records()
                .charts()
                .begin(person.id(), Side.LEFT, act.userId(), Map.of(), act)
                .episode()
                .id();
    }

    /** A code for a phone, as the therapist makes it on the page. */
    String code(String episodeId) {
        therapist.get("/episodes/" + episodeId + "/history");
        return therapist
                .post("/episodes/" + episodeId + "/intake")
                .body()
                .replaceAll("(?s).*<code[^>]*>https?://[^/]+(/p/[^<]+)</code>.*", "$1");
    }

    /** Somebody who opened a code. */
    Visitor opened(String code) {
        Visitor person = server.visitor();
        person.get(code);
        assertThat(TestServer.location(person.post(code))).isEqualTo("/before");
        person.get("/before");
        return person;
    }

    /** A code made beside the pages. */
    String link(String episodeId, LinkPurpose purpose, Instant expires) {
        return "/p/" + Charts.code(server, episodeId, purpose, expires);
    }
}
