package slipway.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.security.crypto.password.PasswordEncoder;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.access.StaffAccount;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;
import slipway.web.WebServer;

class BlockedAccountTest {
    private static final String PASSWORD = "a long sentence for tests";

    private static StaffAccount account(TestServer server, String login) {
        String hash = Objects.requireNonNull(
                server.server().part(PasswordEncoder.class).encode(PASSWORD));
        String clinicId = server.records().clinics().list().get(0).id();
        Act act = new Act("test", Role.PROGRAM, clinicId, Instant.now());
        return server.records()
                .staff()
                .add(login, "B", EnumSet.of(Role.THERAPIST, Role.ASSISTANT), Reach.OWN, hash, act);
    }

    private static void change(Visitor lead, StaffAccount account, String role, String active) {
        lead.post(
                "/clinic/staff/" + account.id(),
                "name",
                "B",
                "roles",
                role,
                "reach",
                "own",
                "active",
                active,
                "version",
                String.valueOf(account.version()));
    }

    @Test
    void isOutAtOnceOnEveryServer(@TempDir Path folder) {
        try (TestServer one = new TestServer(folder, true);
                WebServer two = one.beside()) {
            StaffAccount account = account(one, "blocked.soon");
            Visitor here = one.visitor().signIn(account.login(), PASSWORD);
            Visitor second = one.visitor().signIn(account.login(), PASSWORD);
            Visitor there = second.movedTo(two);
            Visitor colleague = one.signedIn("therapist");
            assertThat(here.get("/today").statusCode()).isEqualTo(200);
            assertThat(there.get("/today").statusCode()).isEqualTo(200);

            change(one.signedIn("lead"), account, "therapist", "");
            assertThat(TestServer.location(here.get("/today"))).isEqualTo("/sign-in");
            assertThat(TestServer.location(there.get("/today"))).isEqualTo("/sign-in");
            assertThat(there.post("/account/second-factor", "code", "123456").statusCode())
                    .isEqualTo(403);
            assertThat(colleague.get("/today").statusCode()).isEqualTo(200);
        }
    }

    @Test
    void rolesThatWereTakenAreGoneAtOnce() {
        TestServer server = TestServer.shared();
        StaffAccount account = account(server, "fewer.roles");
        Visitor visitor = server.visitor().signIn(account.login(), PASSWORD);
        change(server.signedIn("lead"), account, "assistant", "yes");
        assertThat(TestServer.location(visitor.get("/today"))).isEqualTo("/sign-in");
    }

    @Test
    void aLeadGetsNoPasswordOfTheirOwnFromTheList() {
        TestServer server = TestServer.shared();
        Visitor lead = server.signedIn("lead");
        String id = server.records()
                .staff()
                .credentials("lead")
                .orElseThrow()
                .account()
                .id();
        lead.post("/clinic/staff/" + id + "/password");
        assertThat(lead.get("/clinic").body()).contains("Change your own password");
        server.signedIn("lead");
    }
}
