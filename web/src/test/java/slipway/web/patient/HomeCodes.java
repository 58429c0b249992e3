package slipway.web.patient;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import slipway.care.record.access.LinkPurpose;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;

/** Codes for the pages of a person at home, on one server, and what is sent from there. */
final class HomeCodes {
    private final TestServer server;
    private final Visitor therapist;

    HomeCodes(TestServer server) {
        this.server = server;
        therapist = server.signedIn("therapist");
    }

    /** The path of a new code. */
    String code(String episodeId) {
        return therapist
                .post("/episodes/" + episodeId + "/links")
                .body()
                .replaceAll("(?s).*<code>https?://[^/]+(/p/[^<]+)</code>.*", "$1");
    }

    Visitor opened(String code) {
        Visitor person = server.visitor();
        person.get(code);
        assertThat(TestServer.location(person.post(code))).isEqualTo("/home");
        person.get("/home");
        return person;
    }

    static String[] report(String id, String exercise, String... more) {
        var fields = new ArrayList<>(List.of("id", id, "exercise", exercise, "done", "all", "planned", "6"));
        fields.addAll(List.of(more));
        return fields.toArray(String[]::new);
    }

    static String exercise(Visitor person) {
        return person.get("/home").body().replaceAll("(?s).*(?:<option|name=\"exercise\") value=\"([^\"]+)\".*", "$1");
    }

    /** A code that was given with some version of the plan. */
    String token(String episodeId, int plan) {
        return token(episodeId, plan, false);
    }

    String token(String episodeId, int plan, boolean birthYear) {
        Instant tomorrow = Instant.now().plus(Duration.ofDays(1));
        return Charts.code(server, episodeId, LinkPurpose.GUIDE, OptionalInt.of(plan), tomorrow, birthYear);
    }
}
