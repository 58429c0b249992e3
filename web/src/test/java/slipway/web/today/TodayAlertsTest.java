package slipway.web.today;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.follow.Alert;
import slipway.web.Charts;
import slipway.web.TestServer;

/** An alert stands on Today with who has it and since when, also after it was handed on. */
class TodayAlertsTest {
    private static final TestServer SERVER = TestServer.shared();

    @Test
    void ownerAndTimeAreSaidAndWhoeverItWasHandedToSeesIt() {
        String id = Charts.demoEpisode(SERVER, "Alma");
        Act therapist = Charts.therapist(SERVER);
        Alert alert = Charts.open(SERVER, id)
                .checkIns()
                .raise("new-weakness", "Check-in: unmistakable words", Optional.empty(), therapist.userId());
        String lead = SERVER.records()
                .staff()
                .credentials("lead")
                .orElseThrow()
                .account()
                .id();
        var program = new Act("test", Role.PROGRAM, therapist.clinicId(), Instant.now());
        assertThat(SERVER.signedIn("lead").get("/today?whose=mine").body()).doesNotContain("unmistakable words");
        SERVER.records().alerts().escalate(alert.id(), 0, lead, program);
        assertThat(SERVER.signedIn("lead").get("/today?whose=mine").body())
                .contains("unmistakable words")
                .contains("Handed on to the lead");
        assertThat(SERVER.signedIn("therapist").get("/today").body())
                .contains("unmistakable words")
                .contains("Since ");
        SERVER.records().alerts().acknowledge(alert.id(), "seen", therapist);
        assertThat(SERVER.signedIn("therapist").get("/today").body()).doesNotContain("unmistakable words");
    }
}
