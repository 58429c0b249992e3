package slipway.web.episode.followup;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;
import slipway.web.episode.home.HomeCourse;

class FollowPageTest {
    private static final TestServer SERVER = TestServer.shared();

    private final Visitor therapist = SERVER.signedIn("therapist");

    @Test
    void everyReportOnThePlanHasAnAnswerWithItsReasons() {
        String page = therapist
                .get("/episodes/" + Charts.demoEpisode(SERVER, "Alma") + "/follow")
                .body();
        assertThat(page.split("The person read:", -1)).hasSizeGreaterThanOrEqualTo(10);
        assertThat(page.split("Why this, not more, not less", -1)).hasSizeGreaterThanOrEqualTo(10);
    }

    @Test
    void newWeaknessStopsEverythingUntilAClinicianLetsItGoOn() {
        String id = Charts.demoEpisode(SERVER, "Bjarne");
        String page = therapist.get("/episodes/" + id + "/follow").body();
        assertThat(page).contains("contact same day").contains("nothing until a clinician lets it go on");
        String action = page.replaceAll("(?s).*action=\"(/episodes/[^\"]+/alerts/[^\"]+)\".*", "$1");
        therapist.post(action, "done", "");
        assertThat(therapist.get("/episodes/" + id + "/follow").body()).contains("Take it");
        therapist.post(action, "done", "seen today, strength is full", "goOn", "yes");
        String after = therapist.get("/episodes/" + id + "/follow").body();
        assertThat(after).contains("seen today, strength is full").doesNotContain("Take it</button>");
        var chart = Charts.open(SERVER, id);
        assertThat(chart.decisions().about(HomeCourse.RELEASE)).hasSize(1);
    }

    @Test
    void aCodeIsShownOnceKeptAsADigestAndCanBeTakenBack() {
        String id = Charts.demoEpisode(SERVER, "Rosario");
        HttpResponse<String> made = therapist.post("/episodes/" + id + "/links");
        String address = made.body().replaceAll("(?s).*<code>([^<]+)</code>.*", "$1");
        assertThat(address).matches(".*/p/[A-Za-z0-9_-]{32}");
        String later = therapist.get("/episodes/" + id + "/follow").body();
        assertThat(later).doesNotContain(address).contains("Take it back");
        String action = later.replaceAll("(?s).*action=\"(/episodes/[^\"]+/links/[^\"]+/revoke)\".*", "$1");
        therapist.post(action);
        assertThat(therapist.get("/episodes/" + id + "/follow").body()).contains("taken back");
    }
}
