package slipway.web.api;

import static org.assertj.core.api.Assertions.assertThat;
import static slipway.web.api.ApiCaller.header;
import static slipway.web.api.ApiCaller.json;
import static slipway.web.api.ApiCaller.text;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import slipway.care.record.Role;
import slipway.care.record.access.ApiScope;
import slipway.care.record.access.Reach;
import slipway.care.record.access.StaffAccount;
import slipway.exercises.yaml.YamlDocument;
import slipway.web.TestServer;

/** Who comes in, and what is turned away before it is read. */
class ApiDoorTest {
    private static final String CASES = "/api/v1/cases";

    @Test
    void nobodyComesInWithoutAToken() {
        HttpResponse<byte[]> refused = ApiCaller.nobody().get(CASES);
        assertThat(refused.statusCode()).isEqualTo(401);
        assertThat(header(refused, "WWW-Authenticate")).startsWith("Bearer");
        assertThat(ApiCaller.with("slipway_aaaaaaaaaaaa_" + "a".repeat(32))
                        .get(CASES)
                        .statusCode())
                .isEqualTo(401);
        // A browser that is signed in is nobody here.
        var browser = ApiCaller.server().signedIn("lead");
        assertThat(browser.get("/people").statusCode()).isEqualTo(200);
        assertThat(browser.get(CASES).statusCode()).isEqualTo(401);
        assertThat(ApiCaller.nobody().get("/api/v1/openapi.yaml").statusCode()).isEqualTo(200);
    }

    @Test
    void aTokenEndsOnItsDayByTheLeadAndWithItsAccount() {
        var act = ApiCaller.program();
        StaffAccount leaving = ApiCaller.records()
                .staff()
                .add("leaving", "Invented", Set.of(Role.THERAPIST), Reach.OWN, "{none}", act);
        String over = ApiCaller.token(leaving.id(), Duration.ofSeconds(-1), ApiScope.CASES_READ);
        assertThat(ApiCaller.with(over).get(CASES).statusCode()).isEqualTo(401);

        ApiCaller caller = ApiCaller.with(ApiCaller.token(leaving.id(), Duration.ofDays(1), ApiScope.CASES_READ));
        assertThat(caller.get(CASES).statusCode()).isEqualTo(200);
        ApiCaller.records().tokens().revoke(caller.tokenId(), act);
        assertThat(caller.get(CASES).statusCode()).isEqualTo(401);

        ApiCaller other = ApiCaller.with(ApiCaller.token(leaving.id(), Duration.ofDays(1), ApiScope.CASES_READ));
        assertThat(other.get(CASES).statusCode()).isEqualTo(200);
        ApiCaller.records()
                .staff()
                .change(
                        new StaffAccount(
                                leaving.id(),
                                leaving.login(),
                                leaving.displayName(),
                                leaving.clinicId(),
                                leaving.roles(),
                                leaving.reach(),
                                false,
                                leaving.version()),
                        act)
                .orThrow();
        assertThat(other.get(CASES).statusCode()).isEqualTo(401);
    }

    @Test
    void theLeadMakesATokenThatIsShownOnceAndKeptAsADigest() {
        var lead = ApiCaller.server().signedIn("lead");
        lead.get("/clinic/tokens");
        String therapist = ApiCaller.account("therapist").id();
        String label = "Records " + UUID.randomUUID();
        var fields = new String[] {"label", label, "account", therapist, "days", "30", "scopes", "cases-read"};
        HttpResponse<String> made = lead.post("/clinic/tokens", fields);
        assertThat(made.statusCode()).isEqualTo(200);
        var found = java.util.regex.Pattern.compile("slipway_[a-z2-7]{12}_[a-z2-7]{32}")
                .matcher(made.body());
        assertThat(found.find()).isTrue();
        ApiCaller caller = ApiCaller.with(found.group());
        assertThat(caller.get(CASES).statusCode()).isEqualTo(200);
        assertThat(caller.get("/api/v1/cases/none/fhir").statusCode()).isEqualTo(403);
        String page = lead.get("/clinic/tokens").body();
        assertThat(page).contains(label).contains(caller.tokenId()).doesNotContain(found.group());
        // Loading the answer again makes no second one.
        assertThat(lead.post("/clinic/tokens", fields).statusCode()).isEqualTo(422);
        assertThat(TestServer.location(lead.post("/clinic/tokens/" + caller.tokenId() + "/revoke")))
                .isEqualTo("/clinic/tokens");
        assertThat(caller.get(CASES).statusCode()).isEqualTo(401);
        assertThat(lead.post("/clinic/tokens", "label", "", "days", "0").statusCode())
                .isEqualTo(422);
    }

    @Test
    void whatIsTooLargeOrInAnotherFormIsTurnedAway() {
        ApiCaller caller = ApiCaller.of("therapist", ApiScope.PLANS_READ, ApiScope.CASES_READ);
        var large = new byte[YamlDocument.MAX_BYTES + 1];
        java.util.Arrays.fill(large, (byte) ' ');
        assertThat(plan(caller, large, "application/yaml").statusCode()).isEqualTo(413);
        var small = "format: 1".getBytes(StandardCharsets.UTF_8);
        assertThat(plan(caller, small, "text/plain").statusCode()).isEqualTo(415);
        assertThat(plan(caller, small, "application/json; charset=ISO-8859-1").statusCode())
                .isEqualTo(415);
        assertThat(caller.send(
                                "POST",
                                "/api/v1/plans",
                                small,
                                "Content-Type",
                                "application/yaml",
                                "Content-Encoding",
                                "gzip")
                        .statusCode())
                .isEqualTo(415);
        assertThat(plan(caller, small, "application/yaml").statusCode()).isEqualTo(422);
        assertThat(plan(caller, ("a: " + "[".repeat(5_000)).getBytes(StandardCharsets.UTF_8), "application/yaml")
                        .statusCode())
                .isEqualTo(422);
        assertThat(plan(caller, "a: &x [1]\nb: *x".getBytes(StandardCharsets.UTF_8), "application/yaml")
                        .statusCode())
                .isEqualTo(422);
        assertThat(caller.get("/api/v1/cases/none", "Accept", "image/png").statusCode())
                .isEqualTo(406);
    }

    private static HttpResponse<byte[]> plan(ApiCaller caller, byte[] body, String type) {
        return caller.send("POST", "/api/v1/plans", body, "Content-Type", type);
    }

    @Test
    void whatCannotBeKeptIsAMistakeAndNoFault() {
        ApiCaller caller = ApiCaller.of("therapist", ApiScope.CASES_WRITE);
        String wrong = ApiCaller.example("low-irritability-stiff").replaceFirst("name: .*", "name: \"a\\\\0b\"");
        assertThat(wrong).contains("\\0");
        HttpResponse<byte[]> refused = caller.send(
                "POST",
                CASES,
                wrong,
                "Content-Type",
                "application/yaml",
                "Idempotency-Key",
                UUID.randomUUID().toString());
        assertThat(refused.statusCode()).isEqualTo(422);
    }

    @Test
    void anotherMethodOrAddressIsToldInTheSameForm() {
        ApiCaller caller = ApiCaller.of("therapist", ApiScope.CASES_READ);
        HttpResponse<byte[]> method = caller.send("DELETE", CASES, "");
        assertThat(method.statusCode()).isEqualTo(405);
        assertThat(header(method, "Allow")).isEqualTo("GET, POST");
        assertThat(caller.get("/api/v2/cases").statusCode()).isEqualTo(404);
        assertThat(caller.get("/api/v1/cases/none").statusCode()).isEqualTo(404);
        HttpResponse<byte[]> scope = caller.get("/api/v1/cases/none/fhir");
        assertThat(scope.statusCode()).isEqualTo(403);
        assertThat(json(scope).path("detail").asString()).contains("fhir-read");
        assertThat(text(scope)).doesNotContain(caller.token());
    }

    @Test
    void whoeverAsksTooOftenWaits() {
        ApiCaller caller = ApiCaller.of("colleague", ApiScope.FHIR_READ);
        HttpResponse<byte[]> answer = caller.get(CASES);
        int asked = 1;
        while (answer.statusCode() != 429 && asked < 400) {
            answer = caller.get(CASES);
            asked++;
        }
        assertThat(answer.statusCode()).isEqualTo(429);
        assertThat(Integer.parseInt(header(answer, "Retry-After"))).isPositive();
        assertThat(asked).isGreaterThan(120);
    }
}
