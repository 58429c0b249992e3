package slipway.web.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.chart.Chart;
import slipway.web.TestServer;

/** A referral from a file, over HTTP. */
class ReferralTest {
    private static final TestServer SERVER = TestServer.shared();
    private static final Path EXAMPLE = Path.of("../examples/referral.json");
    private static final Path SEEDS = Path.of("../exchange/src/test/resources/slipway/exchange/fhir/seeds");

    private final TestServer.Visitor therapist = SERVER.signedIn("therapist");
    private String name = "";
    private String bundle = "";

    @BeforeEach
    void nameSomebody() throws IOException {
        name = "Invented " + UUID.randomUUID().toString().substring(0, 8);
        bundle = Files.readString(EXAMPLE).replace("Ilka Brandauer (invented)", name);
        therapist.get("/people/referral");
    }

    private HttpResponse<String> post(String path, byte[] file, String... fields) {
        String border = "----" + UUID.randomUUID();
        var body = new StringBuilder();
        for (int i = 0; i < fields.length; i += 2) {
            part(body, border, fields[i], fields[i + 1]);
        }
        part(body, border, "_csrf", therapist.token());
        if (file.length > 0) {
            body.append("--")
                    .append(border)
                    .append("\r\nContent-Disposition: form-data; name=\"file\"; filename=\"x\"\r\n");
            body.append("Content-Type: application/json\r\n\r\n");
            body.append(new String(file, StandardCharsets.ISO_8859_1)).append("\r\n");
        }
        body.append("--").append(border).append("--\r\n");
        return therapist.send(HttpRequest.newBuilder(URI.create(SERVER.address() + path))
                .header("Content-Type", "multipart/form-data; boundary=" + border)
                .POST(HttpRequest.BodyPublishers.ofString(body.toString(), StandardCharsets.ISO_8859_1)));
    }

    private static void part(StringBuilder body, String border, String name, String value) {
        body.append("--").append(border).append("\r\nContent-Disposition: form-data; name=\"");
        body.append(name).append("\"\r\n\r\n").append(value).append("\r\n");
    }

    private HttpResponse<String> upload(String text, String... fields) {
        return post("/people/referral", text.getBytes(StandardCharsets.UTF_8), fields);
    }

    private static String hidden(HttpResponse<String> page, String field) {
        var matcher =
                Pattern.compile("name=\"" + field + "\" value=\"([^\"]*)\"").matcher(page.body());
        assertThat(matcher.find()).as(page.body()).isTrue();
        return matcher.group(1).replace("&#43;", "+").replace("&#61;", "=");
    }

    private HttpResponse<String> take(HttpResponse<String> shown, String... more) {
        var fields = new String[10 + more.length];
        String[] names = {"kept", "into", "side", "language", "state"};
        for (int i = 0; i < names.length; i++) {
            fields[2 * i] = names[i];
            fields[2 * i + 1] = hidden(shown, names[i]);
        }
        System.arraycopy(more, 0, fields, 10, more.length);
        return post("/people/referral/take", new byte[0], fields);
    }

    private static Chart chart(String episode) {
        String clinic = SERVER.records().clinics().list().get(0).id();
        return SERVER.records()
                .charts()
                .open(episode, new Act("test", Role.PROGRAM, clinic, Instant.now()))
                .chartIfOpen()
                .orElseThrow();
    }

    @Test
    void isShownThenTakenOverAsANewPersonAndIntoTheSameOneLater() {
        assertThat(upload(bundle).statusCode()).isEqualTo(422);
        HttpResponse<String> shown = upload(bundle, "side", "right", "language", "en");
        assertThat(shown.statusCode()).isEqualTo(200);
        assertThat(shown.body()).contains(name, "M54.16", "MedicationRequest").doesNotContain("Somebody of this name");
        assertThat(SERVER.records()
                        .caseload()
                        .people(name, "", 5, new Act("test", Role.PROGRAM, clinic(), Instant.now())))
                .isEmpty();
        String location = TestServer.location(take(shown));
        assertThat(location).matches("/episodes/[^/]+/history");
        String episode = location.split("/", -1)[2];
        assertThat(chart(episode).person().details().name()).isEqualTo(name);
        assertThat(chart(episode).measures().list()).hasSize(1);
        // Whoever sends it again is told of the namesake, and that nothing would change for them.
        assertThat(upload(bundle, "side", "right").body()).contains("Somebody of this name");
        assertThat(upload(bundle, "into", episode).body()).contains("Nothing would change");

        String other = bundle.replace(name, name + " junior").replace("M54.16", "G57.01");
        HttpResponse<String> differs = upload(other, "into", episode);
        assertThat(take(differs).statusCode()).isEqualTo(409);
        chart(episode).measures().add("pain", java.time.LocalDate.of(2026, 3, 3), total());
        HttpResponse<String> stale = take(differs, "same", "yes");
        assertThat(stale.statusCode()).isEqualTo(409);
        assertThat(chart(episode).person().details().name()).isEqualTo(name);
        assertThat(take(stale, "same", "yes").statusCode()).isEqualTo(302);
        assertThat(chart(episode).person().details().name()).isEqualTo(name + " junior");
    }

    @Test
    void theLargestFileThatIsShownCanBeConfirmedAndOneByteMoreIsRefusedInWords() {
        String padded = bundle + " ".repeat(ReferralForm.MOST_BYTES - bundle.getBytes(StandardCharsets.UTF_8).length);
        HttpResponse<String> shown = upload(padded, "side", "right", "language", "en");
        assertThat(shown.statusCode()).isEqualTo(200);
        assertThat(TestServer.location(take(shown))).matches("/episodes/[^/]+/history");

        HttpResponse<String> over = upload(padded + " ", "side", "right", "language", "en");
        assertThat(over.statusCode()).isEqualTo(422);
        assertThat(over.body()).contains("more than 380 kB");
        assertThat(post("/people/referral/take", new byte[0], "kept", "A".repeat(520_000), "side", "left")
                        .statusCode())
                .isEqualTo(422);
    }

    private static String clinic() {
        return SERVER.records().clinics().list().get(0).id();
    }

    private static tools.jackson.databind.node.ObjectNode total() {
        return tools.jackson.databind.json.JsonMapper.shared()
                .createObjectNode()
                .put("total", 3);
    }

    @Test
    void hostileFilesAreRefusedAndNothingIsStored() throws IOException {
        String[] hostile = {
            "{\"a\":".repeat(200) + "1" + "}".repeat(200),
            "<?xml version=\"1.0\"?><!DOCTYPE x [<!ENTITY a \"b\">]><Bundle>&a;</Bundle>",
            bundle.replace("8a3b7c04", "8a3b7c03"),
            bundle.replaceFirst("\"type\":", "\"type\": \"collection\", \"type\":"),
            "{\"resourceType\":\"Bundle\",\"type\":\"collection\",\"x\":1e99999}",
            "[".repeat(50_000),
            "\u0000\u0001",
            " ".repeat(ReferralForm.MOST_BYTES + 1)
        };
        for (String text : hostile) {
            assertThat(upload(text, "side", "left").statusCode())
                    .as(text.substring(0, Math.min(60, text.length())))
                    .isEqualTo(422);
        }
        try (var files = Files.list(SEEDS)) {
            for (Path seed : files.toList()) {
                assertThat(upload(Files.readString(seed, StandardCharsets.ISO_8859_1), "side", "left")
                                .statusCode())
                        .as(seed.toString())
                        .isIn(200, 422);
            }
        }
        assertThat(post("/people/referral/take", new byte[0], "kept", "%%%", "side", "left")
                        .statusCode())
                .isEqualTo(422);
        assertThat(post("/people/referral/take", new byte[0], "kept", "AAAA=", "side", "left")
                        .statusCode())
                .isEqualTo(422);
        assertThat(upload(bundle, "into", "none").statusCode()).isEqualTo(404);
    }
}
