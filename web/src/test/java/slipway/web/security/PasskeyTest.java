package slipway.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.security.crypto.password.PasswordEncoder;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Passkey;
import slipway.care.record.access.Reach;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.care.record.trail.TrailEntry;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;
import slipway.web.WebServer;
import slipway.web.demo.DemoClinic;

class PasskeyTest {
    private static final TestServer SERVER = TestServer.shared();
    private static final String PASSWORD = "a long sentence for tests";
    private static final String ORIGIN = "http://localhost:" + SERVER.server().port();
    private static final String NOT_KNOWN = "That passkey is not known here";

    private static StaffAccount account(String login) {
        String hash = Objects.requireNonNull(
                SERVER.server().part(PasswordEncoder.class).encode(PASSWORD));
        return SERVER.records().staff().add(login, "P", EnumSet.of(Role.THERAPIST), Reach.OWN, hash, act());
    }

    private static Act act() {
        String clinicId = SERVER.records().clinics().list().get(0).id();
        return new Act("test", Role.PROGRAM, clinicId, Instant.now());
    }

    private static HttpResponse<String> add(Visitor visitor, SoftKey key) {
        var options = visitor.post("/account/passkeys/options", "label", "Phone", "current", PASSWORD);
        assertThat(options.statusCode()).isEqualTo(200);
        visitor.post("/account/passkeys", "label", "Phone", "answer", key.make(options.body()));
        return visitor.get("/account");
    }

    /** An account with a passkey. */
    private static SoftKey keyOf(StaffAccount account, SoftKey key) {
        add(SERVER.visitor().signIn(account.login(), PASSWORD), key);
        assertThat(passkeys(account)).hasSize(1);
        return key;
    }

    private static SoftKey keyOf(StaffAccount account) {
        return keyOf(account, new SoftKey(ORIGIN));
    }

    private static List<Passkey> passkeys(StaffAccount account) {
        return SERVER.records().passkeys().list(account.id());
    }

    private static String options(Visitor visitor) {
        visitor.get("/sign-in");
        return visitor.post("/sign-in/passkey/options").body();
    }

    private static HttpResponse<String> enter(Visitor visitor, SoftKey key) {
        String options = options(visitor);
        return visitor.post("/sign-in/passkey", "answer", key.enter(options));
    }

    private static void assertRefused(HttpResponse<String> answer, String sentence) {
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).contains(sentence);
    }

    @Test
    void itOpensWithoutANameUntilItIsRemoved() {
        StaffAccount account = account("key.opens");
        SoftKey key = keyOf(account);
        Visitor visitor = SERVER.visitor();
        String options = options(visitor);
        String before = visitor.cookie("slipway");
        assertThat(TestServer.location(visitor.post("/sign-in/passkey", "answer", key.enter(options))))
                .isEqualTo("/today");
        assertThat(visitor.cookie("slipway")).isNotEqualTo(before);
        assertThat(visitor.get("/today").statusCode()).isEqualTo(200);
        assertThat(passkeys(account).get(0).lastUsedAt()).isPresent();

        visitor.get("/account");
        String id = passkeys(account).get(0).id();
        visitor.post("/account/passkeys/remove", "passkey", id, "current", "not the password");
        assertThat(passkeys(account)).hasSize(1);
        visitor.post("/account/passkeys/remove", "passkey", id, "current", PASSWORD);
        assertRefused(enter(SERVER.visitor(), key), NOT_KNOWN);
        assertThat(SERVER.records().trail().list(Chain.ofClinic(account.clinicId()), 0, 5))
                .filteredOn(entry -> entry.who().equals(account.id()))
                .extracting(TrailEntry::action, TrailEntry::entity)
                .startsWith(
                        Tuple.tuple(Action.CHANGE, "passkey/removed"),
                        Tuple.tuple(Action.SIGN_IN_FAILED, "staff"),
                        Tuple.tuple(Action.SIGN_IN, "staff"),
                        Tuple.tuple(Action.CREATE, "passkey"));
    }

    @Test
    void anAnswerCountsOnceAndInItsOwnSessionOnly() {
        SoftKey key = keyOf(account("key.once"));
        Visitor visitor = SERVER.visitor();
        String answer = key.enter(options(visitor));
        Visitor other = SERVER.visitor();
        other.get("/sign-in");
        assertRefused(other.post("/sign-in/passkey", "answer", answer), "That took too long");
        options(other);
        assertRefused(other.post("/sign-in/passkey", "answer", answer), NOT_KNOWN);
        assertThat(TestServer.location(visitor.post("/sign-in/passkey", "answer", answer)))
                .isEqualTo("/today");
        visitor.get("/account");
        assertRefused(visitor.post("/sign-in/passkey", "answer", answer), "That took too long");
    }

    @Test
    void anAnswerForAnotherSiteOrWithoutItsOwnerIsRefused() {
        StaffAccount account = account("key.elsewhere");
        SoftKey key = keyOf(account);
        Visitor visitor = SERVER.visitor();
        String phished = key.enter(options(visitor), "https://slipway.example");
        assertRefused(visitor.post("/sign-in/passkey", "answer", phished), NOT_KNOWN);
        String otherParty = key.enter(options(visitor).replace("\"localhost\"", "\"slipway.example\""));
        assertRefused(visitor.post("/sign-in/passkey", "answer", otherParty), NOT_KNOWN);
        assertRefused(visitor.post("/sign-in/passkey", "answer", "no answer at all"), "That took too long");
        options(visitor);
        assertRefused(visitor.post("/sign-in/passkey", "answer", "{\"id\":[]}"), NOT_KNOWN);
        assertRefused(enter(visitor, key.verifying(false)), NOT_KNOWN);
        assertThat(visitor.get("/today").statusCode()).isEqualTo(302);
    }

    @Test
    void aDeviceThatSaysItBelongsToSomebodyElseIsRefused() {
        StaffAccount somebody = account("key.somebody");
        SoftKey key = keyOf(account("key.other"));
        assertRefused(enter(SERVER.visitor(), key.ownedBy(somebody.id())), NOT_KNOWN);
    }

    @Test
    void aCountThatDoesNotRiseIsRefusedAndTold() {
        StaffAccount account = account("key.count");
        SoftKey key = keyOf(account, new SoftKey(ORIGIN).counting(10));
        Visitor visitor = SERVER.visitor();
        assertThat(TestServer.location(enter(visitor, key))).isEqualTo("/today");
        assertRefused(enter(SERVER.visitor(), key.counting(5)), "there may be a copy of it");
        assertThat(SERVER.records().trail().list(Chain.ofClinic(account.clinicId()), 0, 5))
                .filteredOn(entry -> entry.who().equals(account.id()))
                .extracting(TrailEntry::action, TrailEntry::entity)
                .startsWith(Tuple.tuple(Action.SIGN_IN_FAILED, "passkey/count-went-back"));
        assertThat(TestServer.location(enter(SERVER.visitor(), key.counting(20))))
                .isEqualTo("/today");
    }

    @Test
    void anAccountThatMayNotSignInDoesNotByPasskeyEither() {
        StaffAccount account = account("key.left");
        SoftKey key = keyOf(account);
        SERVER.records()
                .staff()
                .change(
                        new StaffAccount(
                                account.id(),
                                account.login(),
                                account.displayName(),
                                account.clinicId(),
                                account.roles(),
                                account.reach(),
                                false,
                                account.version()),
                        act());
        assertRefused(enter(SERVER.visitor(), key), NOT_KNOWN);
    }

    @Test
    void afterGuessesThePasskeyWaitsAsThePasswordDoes() {
        SoftKey key = keyOf(account("key.guessed"));
        Visitor visitor = SERVER.visitor();
        visitor.get("/sign-in");
        for (int i = 0; i < 8; i++) {
            visitor.post("/sign-in", "login", "key.guessed", "password", "wrong wrong wrong");
        }
        assertRefused(enter(visitor, key), "Too many attempts");
    }

    @Test
    void onesOwnAreRemovedOnly() {
        StaffAccount owner = account("key.owner");
        keyOf(owner);
        account("key.thief");
        Visitor thief = SERVER.visitor().signIn("key.thief", PASSWORD);
        String id = passkeys(owner).get(0).id();
        assertThat(thief.post("/account/passkeys/remove", "passkey", id, "current", PASSWORD)
                        .statusCode())
                .isEqualTo(404);
        assertThat(passkeys(owner)).hasSize(1);
    }

    @Test
    void addingAsksForThePasswordAndForADeviceThatKnowsItsOwner() {
        StaffAccount account = account("key.added");
        Visitor visitor = SERVER.visitor().signIn("key.added", PASSWORD);
        var wrong = visitor.post("/account/passkeys/options", "label", "Phone", "current", "not the password");
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("The password of now is not right").doesNotContain("challenge");
        SoftKey key = new SoftKey(ORIGIN);
        String signIn = visitor.post("/sign-in/passkey/options").body();
        String made = key.make(signIn.replace("\"rpId\":\"localhost\"", "\"rp\":{\"id\":\"localhost\"}"));
        visitor.post("/account/passkeys", "label", "Phone", "answer", made);
        assertThat(passkeys(account)).isEmpty();
        assertThat(add(visitor, key.verifying(false)).body()).contains("The passkey was not added");
        assertThat(add(visitor, new SoftKey("https://slipway.example")).body()).contains("The passkey was not added");
        assertThat(add(visitor, key.verifying(true)).body()).contains("The passkey Phone is added");
        assertThat(add(visitor, key).body()).contains("The passkey was not added");
        assertThat(passkeys(account)).hasSize(1);
    }

    @Test
    void aNewFirstPasswordTakesThePasskeysAway() {
        StaffAccount account = account("key.reset");
        SoftKey key = keyOf(account);
        SERVER.signedIn("lead").post("/clinic/staff/" + account.id() + "/password");
        assertRefused(enter(SERVER.visitor(), key), NOT_KNOWN);
    }

    /** Both are told the same public address, as servers behind one proxy are. */
    @Test
    void twoServersTakeAnAnswerOnceTogether(@TempDir Path folder) throws Exception {
        String origin = "http://localhost:9999";
        try (TestServer one = TestServer.reachedAt(origin, folder);
                WebServer two = one.beside()) {
            String password = Objects.requireNonNull(DemoClinic.SIGN_INS.get("lead"));
            Visitor owner = one.signedIn("lead");
            SoftKey key = new SoftKey(origin);
            String asked = owner.post("/account/passkeys/options", "label", "Phone", "current", password)
                    .body();
            owner.movedTo(two).post("/account/passkeys", "label", "Phone", "answer", key.make(asked));
            for (int round = 0; round < 5; round++) {
                Visitor here = one.visitor();
                String answer = key.enter(options(here));
                Visitor there = here.movedTo(two);
                List<CompletableFuture<String>> both = Stream.of(here, there)
                        .map(visitor -> CompletableFuture.supplyAsync(
                                () -> TestServer.location(visitor.post("/sign-in/passkey", "answer", answer))))
                        .toList();
                assertThat(List.of(both.get(0).get(), both.get(1).get()))
                        .as("round %d", round)
                        .containsOnlyOnce("/today");
            }
        }
    }

    @Test
    void withoutTlsThePagesSayWhyThereAreNone(@TempDir Path folder) {
        try (TestServer plain = TestServer.reachedAt("http://clinic.example", folder)) {
            Visitor visitor = plain.signedIn("therapist");
            assertThat(visitor.get("/account").body()).contains("an address that begins with https://");
            assertThat(visitor.get("/sign-in").body())
                    .contains("No passkeys at this address")
                    .doesNotContain("passkey.js");
            assertThat(visitor.post("/sign-in/passkey/options").statusCode()).isEqualTo(404);
        }
        try (TestServer safe = TestServer.reachedAt("https://clinic.example", folder.resolve("safe"))) {
            assertThat(safe.visitor().get("/sign-in").body())
                    .contains("data-host=\"clinic.example\"")
                    .contains("href=\"https://clinic.example/sign-in\"");
        }
    }

    @Test
    void aServerThatWasToldNoAddressLeadsNobodyElseToItsOwnMachine() throws IOException {
        assertThat(SERVER.visitor().get("/sign-in").body()).contains("href=\"" + ORIGIN + "/sign-in\"");
        try (var line =
                new Socket(InetAddress.getLoopbackAddress(), SERVER.server().port())) {
            line.getOutputStream()
                    .write("GET /sign-in HTTP/1.1\r\nHost: 192.168.1.5\r\nConnection: close\r\n\r\n"
                            .getBytes(StandardCharsets.UTF_8));
            String page = new String(line.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(page).contains("No passkeys at this address").doesNotContain("localhost");
        }
    }
}
