package slipway.web.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import slipway.care.record.access.LinkPurpose;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;

class IntakeDoorTest {
    private static final TestServer SERVER = TestServer.ofItsOwn();

    private final IntakeCodes codes = new IntakeCodes(SERVER);
    private final Visitor therapist = codes.therapist();

    @Test
    void aCodeOpensItsOwnPlaceOnly() {
        String id = codes.episode("Ana Reed");
        Visitor before = codes.opened(codes.code(id));
        assertThat(TestServer.location(before.get("/home"))).isEqualTo("/p");
        assertThat(TestServer.location(before.get("/home/guide"))).isEqualTo("/p");
        String alma = Charts.demoEpisode(SERVER, "Alma");
        String home = codes.link(alma, LinkPurpose.GUIDE, Instant.now().plus(Duration.ofDays(1)));
        Visitor guide = SERVER.visitor();
        guide.get(home);
        assertThat(TestServer.location(guide.post(home))).isEqualTo("/home");
        assertThat(TestServer.location(guide.get("/before"))).isEqualTo("/p");
        // The value of the one cookie under the name of the other is worth nothing.
        String forged = "slipway-before=" + guide.cookie("slipway-home");
        assertThat(TestServer.location(SERVER.visitor()
                        .send(java.net.http.HttpRequest.newBuilder(java.net.URI.create(SERVER.address() + "/before"))
                                .header("Cookie", forged)
                                .GET())))
                .isEqualTo("/p");
        assertThat(TestServer.location(therapist.get("/before"))).isEqualTo("/p");
        assertThat(TestServer.location(before.get("/episodes/" + id + "/history")))
                .isEqualTo("/sign-in");
        // With a plan at home the questions are over.
        String late = codes.link(alma, LinkPurpose.INTAKE, Instant.now().plus(Duration.ofDays(1)));
        assertThat(TestServer.location(SERVER.visitor().post(late))).isEqualTo("/p");
    }

    @Test
    void aRevokedAndAnExpiredCodeOpenNothing() {
        String id = codes.episode("Lea Moor");
        String code = codes.code(id);
        Visitor person = codes.opened(code);
        String page = therapist.get("/episodes/" + id + "/history").body();
        therapist.post(page.replaceAll("(?s).*action=\"(/episodes/[^\"]+/intake/[^\"]+/revoke)\".*", "$1"));
        assertThat(TestServer.location(person.get("/before"))).isEqualTo("/p");
        assertThat(TestServer.location(person.post("/before/1", "saddleNumbness", "yes")))
                .isEqualTo("/p");
        assertThat(TestServer.location(SERVER.visitor().get(code))).isEqualTo("/p");
        String old = codes.link(id, LinkPurpose.INTAKE, Instant.now().minusSeconds(1));
        assertThat(TestServer.location(SERVER.visitor().get(old))).isEqualTo("/p");
        // The code of one person cannot be taken back through another.
        String other = codes.episode("Pia Sund");
        assertThat(therapist.post("/episodes/" + other + "/intake/none/revoke").statusCode())
                .isEqualTo(404);
        assertThat(Charts.open(SERVER, id).intakes().list()).isEmpty();
    }

    @Test
    void aFloodIsSlowedAndDangerIsAnsweredAsNotGot() {
        Visitor person = codes.opened(codes.code(codes.episode("Bo Lund")));
        HttpResponse<String> last = person.get("/before/1");
        for (int i = 0; i < 400 && last.statusCode() == 200; i++) {
            last = person.get("/before/1");
        }
        assertThat(last.statusCode()).isEqualTo(429);
        assertThat(person.post("/before/1", "saddleNumbness", "yes").body())
                .contains("tel:911")
                .contains("has NOT got this");
        assertThat(person.post("/before/11", "goal", "a walk").body())
                .contains("a walk")
                .contains("not kept yet");
    }

    @Test
    void aFormOfAnotherSiteAndAWrongPageDoNothing() {
        String id = codes.episode("Kai Holm");
        Visitor person = codes.opened(codes.code(id));
        assertThat(TestServer.location(person.postBare("/before/1", "saddleNumbness", "yes")))
                .isEqualTo("/p");
        assertThat(TestServer.location(person.get("/before/13"))).isEqualTo("/before");
        assertThat(TestServer.location(person.post("/before/x", "go", "done"))).isEqualTo("/before");
        assertThat(Charts.open(SERVER, id).intakes().list()).isEmpty();
    }
}
