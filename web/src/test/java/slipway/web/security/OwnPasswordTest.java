package slipway.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.EnumSet;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.springframework.security.crypto.password.PasswordEncoder;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;

class OwnPasswordTest {
    private static final TestServer SERVER = TestServer.shared();
    private static final String PASSWORD = "a long sentence for tests";
    private static final String OTHER = "another long sentence for tests";

    private static StaffAccount account(String login) {
        String hash = Objects.requireNonNull(
                SERVER.server().part(PasswordEncoder.class).encode(PASSWORD));
        return SERVER.records().staff().add(login, "O", EnumSet.of(Role.THERAPIST), Reach.OWN, hash, act());
    }

    private static Act act() {
        String clinicId = SERVER.records().clinics().list().get(0).id();
        return new Act("test", Role.PROGRAM, clinicId, Instant.now());
    }

    private static String told(Visitor visitor) {
        return visitor.get("/account").body();
    }

    /** Each of the four places where the password is asked for once more. */
    private static void guess(Visitor visitor, int place) {
        switch (place) {
            case 0 -> visitor.post("/account/password", "current", "wrong wrong", "changed", OTHER);
            case 1 -> visitor.post("/account/second-factor/remove", "current", "wrong wrong");
            case 2 -> visitor.post("/account/passkeys/remove", "passkey", "x", "current", "wrong wrong");
            default -> visitor.post("/account/passkeys/options", "label", "Phone", "current", "wrong wrong");
        }
    }

    @Test
    void guessesOnAllPlacesTogetherSlowDownHereAndAtTheDoor() {
        StaffAccount account = account("own.guessed");
        Visitor visitor = SERVER.visitor().signIn(account.login(), PASSWORD);
        for (int guess = 0; guess < 8; guess++) {
            guess(visitor, guess % 4);
        }
        visitor.post("/account/password", "current", PASSWORD, "changed", OTHER);
        assertThat(told(visitor)).contains("Too many attempts");
        HttpResponse<String> passkey = visitor.post("/account/passkeys/options", "label", "Phone", "current", PASSWORD);
        assertThat(passkey.statusCode()).isEqualTo(422);
        assertThat(passkey.body()).contains("Too many attempts");

        Visitor atTheDoor = SERVER.visitor();
        atTheDoor.get("/sign-in");
        assertThat(atTheDoor
                        .post("/sign-in", "login", account.login(), "password", PASSWORD)
                        .body())
                .contains("Too many attempts");
        assertThat(SERVER.records().trail().list(Chain.ofClinic(account.clinicId()), 0, 20))
                .filteredOn(entry -> entry.entityId().equals(account.id()))
                .filteredOn(entry -> entry.action() == Action.SIGN_IN_FAILED)
                .hasSizeBetween(4, 8);
    }

    @Test
    void theRightPasswordIsNoFailure() {
        StaffAccount account = account("own.right");
        Visitor visitor = SERVER.visitor().signIn(account.login(), PASSWORD);
        for (int time = 0; time < 6; time++) {
            visitor.post("/account/passkeys/remove", "passkey", "none", "current", PASSWORD);
        }
        assertThat(SERVER.records()
                        .staff()
                        .credentials(account.login())
                        .orElseThrow()
                        .failures())
                .isZero();
    }

    @Test
    void anotherPasswordEndsTheOtherSessionsAndKeepsThisOne() {
        StaffAccount account = account("own.changed");
        Visitor here = SERVER.visitor().signIn(account.login(), PASSWORD);
        Visitor elsewhere = SERVER.visitor().signIn(account.login(), PASSWORD);
        String before = here.cookie("slipway");
        here.post("/account/password", "current", PASSWORD, "changed", OTHER);
        assertThat(told(here)).contains("The password is changed.");
        assertThat(here.cookie("slipway")).isNotEqualTo(before);
        assertThat(TestServer.location(elsewhere.get("/today"))).isEqualTo("/sign-in");
    }
}
