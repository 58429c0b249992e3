package slipway.web.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;

class ArchiveTest {
    private static final TestServer SERVER = TestServer.shared();

    private final String person = Charts.open(SERVER, Charts.demoEpisode(SERVER, "Alma Ferrer"))
            .person()
            .id();

    @Test
    void aLeadHandsOutAllThatIsKeptAndTheTrailNotesIt() throws IOException {
        Visitor lead = SERVER.signedIn("lead");
        assertThat(lead.get("/people/" + person).body()).contains("/archive");
        HttpResponse<byte[]> answer =
                lead.bytes(HttpRequest.newBuilder(URI.create(SERVER.address() + "/people/" + person + "/archive"))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString("_csrf=" + lead.token())));
        assertThat(answer.headers().firstValue("Content-Disposition").orElse(""))
                .startsWith("attachment");
        var names = new ArrayList<String>();
        try (var zip = new ZipInputStream(new ByteArrayInputStream(answer.body()), StandardCharsets.UTF_8)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                names.add(entry.getName());
            }
        }
        assertThat(names)
                .contains("record.json", "tables/checkins.csv", "tables/data-dictionary.csv")
                .anyMatch(name -> name.startsWith("documents/sheet-"));
        assertThat(SERVER.records().trail().list(Chain.ofPerson(person), 0, 5))
                .anyMatch(
                        entry -> entry.action() == Action.EXPORT && entry.role().equals("LEAD"));
    }

    @Test
    void aTherapistDoesNot() {
        Visitor therapist = SERVER.signedIn("therapist");
        assertThat(therapist.get("/people/" + person).body()).doesNotContain("/archive");
        assertThat(therapist.post("/people/" + person + "/archive").statusCode())
                .isEqualTo(403);
    }
}
