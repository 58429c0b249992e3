package slipway.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.springframework.security.crypto.password.PasswordEncoder;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.access.StaffAccount;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;

class SignInTest {
    private static final TestServer SERVER = TestServer.shared();
    private static final String PASSWORD = "a long sentence for tests";

    private static StaffAccount account(String login) {
        String hash = Objects.requireNonNull(
                SERVER.server().part(PasswordEncoder.class).encode(PASSWORD));
        return SERVER.records().staff().add(login, "S", EnumSet.of(Role.THERAPIST), Reach.OWN, hash, act());
    }

    private static Act act() {
        String clinicId = SERVER.records().clinics().list().get(0).id();
        return new Act("test", Role.PROGRAM, clinicId, Instant.now());
    }

    @Test
    void unknownLoginAndWrongPasswordGetTheSameAnswer() {
        account("same.answer");
        Visitor visitor = SERVER.visitor();
        visitor.get("/sign-in");
        HttpResponse<String> unknown =
                visitor.post("/sign-in", "login", "nobody.here", "password", "wrong wrong wrong");
        HttpResponse<String> wrong = visitor.post("/sign-in", "login", "same.answer", "password", "wrong wrong wrong");
        assertThat(unknown.statusCode()).isEqualTo(wrong.statusCode());
        assertThat(TestServer.plain(unknown).replace("nobody.here", "X"))
                .isEqualTo(TestServer.plain(wrong).replace("same.answer", "X"));
    }

    @Test
    void signingInChangesTheSessionAndSigningOutEndsIt() {
        account("fixed.session");
        Visitor visitor = SERVER.visitor();
        visitor.get("/sign-in");
        String before = visitor.cookie("slipway");
        visitor.signIn("fixed.session", PASSWORD);
        assertThat(visitor.cookie("slipway")).isNotEqualTo(before).isNotEmpty();
        assertThat(visitor.get("/today").statusCode()).isEqualTo(200);
        visitor.post("/sign-out");
        assertThat(TestServer.location(visitor.get("/today"))).isEqualTo("/sign-in");
    }

    @Test
    void guessingSlowsDownAndTheRightPasswordWaitsToo() {
        account("guessed.at");
        Visitor visitor = SERVER.visitor();
        visitor.get("/sign-in");
        for (int i = 0; i < 8; i++) {
            visitor.post("/sign-in", "login", "guessed.at", "password", "wrong wrong wrong");
        }
        HttpResponse<String> right = visitor.post("/sign-in", "login", "guessed.at", "password", PASSWORD);
        assertThat(right.statusCode()).isEqualTo(200);
        assertThat(right.body()).contains("second");
        account("somebody.else");
        SERVER.visitor().signIn("somebody.else", PASSWORD);
    }

    @Test
    void withASecondFactorThePasswordAloneOpensNothing() {
        StaffAccount account = account("two.factors");
        String secret = SecondFactor.newSecret(new java.security.SecureRandom());
        SERVER.records().staff().setTotp(account.id(), Optional.of(secret), act());
        Visitor visitor = SERVER.visitor();
        visitor.get("/sign-in");
        HttpResponse<String> first = visitor.post("/sign-in", "login", "two.factors", "password", PASSWORD);
        assertThat(TestServer.location(first)).isEqualTo("/sign-in/code");
        assertThat(visitor.get("/today").statusCode()).isEqualTo(403);
        visitor.get("/sign-in/code");
        String code = SecondFactor.codeAt(secret, Instant.now());
        assertThat(TestServer.location(visitor.post("/sign-in/code", "code", code)))
                .isEqualTo("/today");
        assertThat(visitor.get("/today").statusCode()).isEqualTo(200);
    }

    @Test
    void aFormWithoutItsTokenChangesNothing() {
        Visitor visitor = SERVER.signedIn("therapist");
        HttpResponse<String> answer = visitor.postBare("/people", "name", "Forged Person", "language", "en");
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(visitor.get("/people?text=Forged").body()).doesNotContain("Forged Person");
    }

    @Test
    void anAddressToReturnToIsNeverTakenFromTheRequest() {
        Visitor visitor = SERVER.visitor();
        HttpResponse<String> answer = visitor.get("/today?back=https://elsewhere.example");
        assertThat(TestServer.location(answer)).isEqualTo("/sign-in");
    }
}
