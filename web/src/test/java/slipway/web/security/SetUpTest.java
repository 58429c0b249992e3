package slipway.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;

/** The first start belongs to whoever can read what the program printed. */
class SetUpTest {
    private static final String PASSWORD = "a long sentence for tests";

    @TempDir
    private Path folder = Path.of("");

    private static HttpResponse<String> send(Visitor visitor, String code) {
        visitor.get("/set-up");
        return post(visitor, code);
    }

    private static HttpResponse<String> post(Visitor visitor, String code) {
        return visitor.post(
                "/set-up",
                "code",
                code,
                "clinic",
                "Invented clinic",
                "setting",
                "therapy",
                "phone",
                "",
                "emergency",
                "112",
                "name",
                "First Lead",
                "login",
                "lead",
                "password",
                PASSWORD);
    }

    @Test
    void onlyThePrintedCodeOfTodayMakesTheFirstAccountAndOnlyOnce() {
        try (TestServer server = new TestServer(folder, false)) {
            Clock dayBeforeYesterday = Clock.offset(Clock.systemUTC(), Duration.ofDays(-2));
            String old = SetUpCode.renew(server.records(), dayBeforeYesterday);
            assertThat(send(server.visitor(), old).statusCode()).as("too old").isEqualTo(422);
            String first = SetUpCode.renew(server.records(), Clock.systemUTC());
            String second = SetUpCode.renew(server.records(), Clock.systemUTC());
            assertThat(send(server.visitor(), first).statusCode())
                    .as("replaced")
                    .isEqualTo(422);
            assertThat(send(server.visitor(), "AAAA-BBBB-CCCC-DDDD").statusCode())
                    .as("guessed")
                    .isEqualTo(422);
            assertThat(server.records().clinics().list()).isEmpty();

            // As somebody types it.
            String typed = second.toLowerCase(java.util.Locale.ROOT).replace("-", " ");
            assertThat(TestServer.location(send(server.visitor(), typed))).isEqualTo("/sign-in");
            assertThat(server.records().clinics().list()).hasSize(1);
            server.visitor().signIn("lead", PASSWORD);

            Visitor late = server.visitor();
            assertThat(TestServer.location(late.get("/set-up"))).isEqualTo("/sign-in");
            late.get("/sign-in");
            assertThat(TestServer.location(post(late, second))).isEqualTo("/sign-in");
            assertThat(server.records().clinics().list()).hasSize(1);
        }
    }

    @Test
    void whereAClinicWasBroughtInByAFileTheFirstAccountBecomesItsLead() {
        try (TestServer server = new TestServer(folder, false)) {
            Act act = new Act("import", Role.PROGRAM, "brought-in", Instant.now());
            server.records().clinics().add("Harbour Steps", "primary-care", "", "911", false, act);
            String code = SetUpCode.renew(server.records(), Clock.systemUTC());
            assertThat(TestServer.location(server.visitor().get("/sign-in"))).isEqualTo("/set-up");
            assertThat(server.visitor().get("/set-up").body()).contains("Harbour Steps", "911", "Make the account");
            assertThat(TestServer.location(send(server.visitor(), code))).isEqualTo("/sign-in");
            assertThat(server.records().clinics().list())
                    .singleElement()
                    .satisfies(clinic -> assertThat(clinic.name()).isEqualTo("Invented clinic"));
            assertThat(server.records().staff().list("brought-in")).hasSize(1);

            Visitor lead = server.visitor().signIn("lead", PASSWORD);
            assertThat(lead.get("/clinic").body()).contains("No backup has been made");
        }
    }
}
