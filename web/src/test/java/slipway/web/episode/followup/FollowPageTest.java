package slipway.web.episode.followup;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.caseload.TodayRow;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;
import slipway.web.episode.home.HomeCourse;

class FollowPageTest {
    private static final TestServer SERVER = TestServer.shared();

    private final Visitor therapist = SERVER.signedIn("therapist");

    private static Act act() {
        StaffAccount account =
                SERVER.records().staff().credentials("therapist").orElseThrow().account();
        return new Act(account.id(), Role.THERAPIST, account.clinicId(), Instant.now());
    }

    private static String episode(String name) {
        return SERVER.records().caseload().today(100, act()).stream()
                .filter(row -> row.name().startsWith(name))
                .map(TodayRow::episodeId)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyReportOnThePlanHasAnAnswerWithItsReasons() {
        String page = therapist.get("/episodes/" + episode("Alma") + "/follow").body();
        assertThat(page.split("The person read:", -1)).hasSizeGreaterThanOrEqualTo(10);
        assertThat(page.split("Why this, not more, not less", -1)).hasSizeGreaterThanOrEqualTo(10);
    }

    @Test
    void newWeaknessStopsEverythingUntilAClinicianLetsItGoOn() {
        String id = episode("Bjarne");
        String page = therapist.get("/episodes/" + id + "/follow").body();
        assertThat(page).contains("contact same day").contains("nothing until a clinician lets it go on");
        String action = page.replaceAll("(?s).*action=\"(/episodes/[^\"]+/alerts/[^\"]+)\".*", "$1");
        therapist.post(action, "done", "");
        assertThat(therapist.get("/episodes/" + id + "/follow").body()).contains("Take it");
        therapist.post(action, "done", "seen today, strength is full", "goOn", "yes");
        String after = therapist.get("/episodes/" + id + "/follow").body();
        assertThat(after).contains("seen today, strength is full").doesNotContain("Take it</button>");
        var chart = SERVER.records().charts().open(id, act()).chartIfOpen().orElseThrow();
        assertThat(chart.decisions().about(HomeCourse.RELEASE)).hasSize(1);
    }

    @Test
    void aCodeIsShownOnceKeptAsADigestAndCanBeTakenBack() {
        String id = episode("Rosario");
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
