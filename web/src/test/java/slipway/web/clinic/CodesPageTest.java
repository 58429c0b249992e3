package slipway.web.clinic;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import slipway.care.codes.CodesFile;
import slipway.care.record.codes.ClinicCodes;
import slipway.web.TestServer;

/** Codes of the clinic, over HTTP: looked at, refused, shown, loaded. */
class CodesPageTest {
    private static final TestServer SERVER = TestServer.shared();
    private static final String HEAD = String.join(",", CodesFile.COLUMNS) + "\n";

    private final TestServer.Visitor lead = SERVER.signedIn("lead");

    private HttpResponse<String> post(String path, String file, Map<String, String> fields) {
        String border = "----" + UUID.randomUUID();
        var all = new LinkedHashMap<>(fields);
        all.put("_csrf", lead.token());
        var body = new StringBuilder();
        all.forEach((name, value) -> body.append(
                "--%s\r\nContent-Disposition: form-data; name=\"%s\"\r\n\r\n%s\r\n".formatted(border, name, value)));
        if (!file.isEmpty()) {
            body.append("--%s\r\nContent-Disposition: form-data; name=\"codes\"; filename=\"x\"\r\n".formatted(border));
            body.append("Content-Type: text/csv\r\n\r\n").append(file).append("\r\n");
        }
        body.append("--").append(border).append("--\r\n");
        return lead.send(HttpRequest.newBuilder(URI.create(SERVER.address() + path))
                .header("Content-Type", "multipart/form-data; boundary=" + border)
                .POST(HttpRequest.BodyPublishers.ofString(body.toString(), StandardCharsets.UTF_8)));
    }

    private static String hidden(HttpResponse<String> page, String field) {
        var matcher =
                Pattern.compile("name=\"" + field + "\" value=\"([^\"]*)\"").matcher(page.body());
        assertThat(matcher.find()).as(page.body()).isTrue();
        return matcher.group(1).replace("&#34;", "\"").replace("&#39;", "'").replace("&amp;", "&");
    }

    @Test
    void aFileIsRefusedOrShownAndThenLoadedOnce() {
        assertThat(lead.get("/clinic/codes").body()).contains("Load a list");
        ClinicCodes codes = SERVER.records().codes();
        String clinic = SERVER.records().clinics().list().get(0).id();
        long before = codes.version(clinic);

        HttpResponse<String> wrong =
                post("/clinic/codes", HEAD + "Q99.8,perhaps,none,2026-01-01,,<b>,own\n", Map.of("version", "0"));
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body())
                .contains("line 2, column 7: billable", "&lt;b&gt;")
                .doesNotContain("<b>");
        assertThat(post("/clinic/codes", "", Map.of("version", "0")).statusCode())
                .isEqualTo(422);

        HttpResponse<String> shown = post(
                "/clinic/codes",
                HEAD + "Q99.8,yes,none,2026-01-01,,\"own \"\"words\"\", 1 & 2\",own\n",
                Map.of("version", "0"));
        assertThat(shown.statusCode()).isEqualTo(200);
        assertThat(shown.body()).contains("New: 1", "Q99.8");
        assertThat(codes.version(clinic)).isEqualTo(before);

        var fields = new LinkedHashMap<String, String>();
        for (String field : new String[] {"version", "keptCodes", "keptExclusions"}) {
            fields.put(field, hidden(shown, field).replace("\n", "\r\n"));
        }
        assertThat(TestServer.location(post("/clinic/codes/load", "", fields))).isEqualTo("/clinic/codes");
        assertThat(codes.version(clinic)).isEqualTo(before + 1);
        assertThat(codes.inUse(clinic).entries())
                .singleElement()
                .satisfies(entry -> assertThat(entry.words()).isEqualTo("own \"words\", 1 & 2"));
        assertThat(post("/clinic/codes/load", "", fields).statusCode()).isEqualTo(409);
        assertThat(codes.version(clinic)).isEqualTo(before + 1);
        assertThat(lead.get("/clinic/codes").body()).contains("Q99.8");
    }
}
