package slipway.web.episode.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.security.crypto.password.PasswordEncoder;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.papers.Paper;
import slipway.documents.paper.PaperJson;
import slipway.documents.paper.PaperText;
import slipway.documents.paper.Signed;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;

class WritePagesTest {
    private static final TestServer SERVER = TestServer.shared();
    private static final String PASSWORD = "a long sentence for papers";
    private static final Pattern VERSION = Pattern.compile("name=\"version\" value=\"(\\d+)\"");

    private final Visitor therapist = SERVER.signedIn("therapist");
    private final String episodeId = Charts.demoEpisode(SERVER, "Alma Ferrer");
    private final String episode = "/episodes/" + episodeId;

    @BeforeAll
    static void anAssistant() {
        if (SERVER.records().staff().credentials("write-assistant").isEmpty()) {
            String hash = Objects.requireNonNull(
                    SERVER.server().part(PasswordEncoder.class).encode(PASSWORD));
            Act act = new Act("test", Role.PROGRAM, Charts.therapist(SERVER).clinicId(), Instant.now());
            SERVER.records()
                    .staff()
                    .add("write-assistant", "An Assistant", EnumSet.of(Role.ASSISTANT), Reach.CLINIC, hash, act);
        }
    }

    /** Begins a paper in the record, so that each test has one of its own. */
    private Paper begun(String kind) {
        String begun = TestServer.location(therapist.post(begin(), "kind", kind));
        Paper opened = paper(begun.substring(begun.lastIndexOf('/') + 1));
        return Charts.open(SERVER, episodeId).papers().draft(kind, opened.visitId(), opened.text());
    }

    private String begin() {
        therapist.get(episode + "/write");
        return episode + "/papers";
    }

    private Paper paper(String id) {
        return Charts.open(SERVER, episodeId).papers().find(id).orElseThrow();
    }

    private String address(Paper paper) {
        return episode + "/papers/" + paper.id();
    }

    private static String version(HttpResponse<String> page) {
        Matcher found = VERSION.matcher(page.body());
        assertThat(found.find()).isTrue();
        return found.group(1);
    }

    @Test
    void everySentenceLinksToWhereItCameFromAndEveryBlankIsListed() {
        Paper paper = begun("evaluation");
        String page = therapist.get(address(paper)).body();
        PaperText text = PaperJson.read(paper.text());
        assertThat(text.blanks()).isNotEmpty();
        for (var blank : text.blanks()) {
            assertThat(page).contains(">" + blank.text() + "</a>");
        }
        for (String step : List.of("history", "screen", "examine", "tolerance", "measure", "write")) {
            assertThat(page).contains("href=\"" + episode + "/" + step);
        }
        assertThat(page).contains("spellcheck=\"true\"");
    }

    @Test
    void aPlanThatIsOnlyProposedIsNotToldAsGiven() {
        String proposed = "/episodes/" + Charts.demoEpisode(SERVER, "Tomas Lindqvist");
        therapist.get(proposed + "/write");
        String begun = TestServer.location(therapist.post(proposed + "/papers", "kind", "discharge"));
        assertThat(therapist.get(begun).body())
                .contains("Exercises: not recorded.")
                .doesNotContain("plan/exercise")
                .doesNotContain("repetitions,");
    }

    @Test
    void theSecondEditorIsToldAndLosesNothing() {
        Paper paper = begun("progress-report");
        PaperText text = PaperJson.read(paper.text());
        String first = text.sentences().get(0).id();
        String second = text.sentences().get(1).id();
        therapist.get(address(paper));
        Visitor lead = SERVER.signedIn("lead");
        lead.get(address(paper));
        String read = String.valueOf(paper.version());
        assertThat(lead.post(address(paper), "version", read, "id", first, "text", "Words of the lead.")
                        .statusCode())
                .isEqualTo(302);
        HttpResponse<String> told = therapist.post(
                address(paper), "version", read, "id", second, "text", "Words of the therapist.", "own.home", "Mine.");
        assertThat(told.statusCode()).isEqualTo(409);
        assertThat(told.body()).contains("Dario Okoye", "Words of the therapist.", "Mine.");
        assertThat(paper(paper.id()).text()).contains("Words of the lead.").doesNotContain("Words of the therapist.");
        assertThat(therapist
                        .post(
                                address(paper),
                                "version",
                                version(told),
                                "id",
                                second,
                                "text",
                                "Words of the therapist.",
                                "own.home",
                                "Mine.")
                        .statusCode())
                .isEqualTo(302);
        assertThat(paper(paper.id()).text()).contains("Words of the lead.", "Words of the therapist.", "Mine.");
    }

    @Test
    void aSignatureFixesWordsAndPicturesAndOnlyAddendaFollow() {
        Paper paper = begun("progress-report");
        String page = address(paper);
        therapist.get(page);
        assertThat(therapist.post(page + "/addenda", "words", "Too early.").statusCode())
                .isEqualTo(403);
        assertThat(therapist.post(page + "/sign", "version", "1").statusCode()).isEqualTo(302);
        Paper signed = paper(paper.id());
        assertThat(signed.signature().orElseThrow().sha256()).isEqualTo(Signed.sha256(signed.text()));
        assertThat(PaperJson.frame(signed.text()).orElseThrow().ruler()).isPresent();
        assertThat(PaperJson.frame(signed.text()).orElseThrow().course()).isPresent();

        String id = PaperJson.read(signed.text()).sentences().get(0).id();
        String now = String.valueOf(signed.version());
        HttpResponse<String> refused = therapist.post(page, "version", now, "id", id, "text", "After the fact.");
        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(refused.body()).contains("After the fact.").doesNotContain("Save mine on top");
        assertThat(paper(paper.id()).text()).isEqualTo(signed.text());

        therapist.get(page);
        therapist.post(page + "/addenda", "words", "A call the day after.");
        therapist.post(page + "/addenda", "words", Signed.coSignature("0".repeat(64)));
        assertThat(paper(paper.id()).addenda())
                .extracting(Paper.Addendum::text)
                .containsExactly("A call the day after.");
        assertThat(therapist.get(page).body()).contains("A call the day after.", "Mara Lindholm");
    }

    @Test
    void anAssistantSignsNotesOfVisitsOnlyAndATherapistCoSigns() {
        Visitor assistant = SERVER.visitor().signIn("write-assistant", PASSWORD);
        Paper report = begun("progress-report");
        assistant.get(address(report));
        assertThat(assistant.post(address(report) + "/sign", "version", "1").statusCode())
                .isEqualTo(403);
        assertThat(paper(report.id()).signature()).isEmpty();

        Paper note = begun("visit-note");
        assertThat(assistant.post(address(note) + "/sign", "version", "1").statusCode())
                .isEqualTo(302);
        assertThat(therapist.get(episode + "/write").body()).contains("waits for a therapist");
        assertThat(assistant.post(address(note) + "/co-sign").statusCode()).isEqualTo(403);
        assertThat(therapist.post(address(note) + "/co-sign").statusCode()).isEqualTo(302);
        assertThat(Signed.of(paper(note.id())).coSignatures()).hasSize(1);
        assertThat(therapist.post(address(note) + "/co-sign").statusCode()).isEqualTo(403);
    }

    @Test
    void versionsStandSideBySide() {
        Paper paper = begun("progress-report");
        String id = PaperJson.read(paper.text()).sentences().get(0).id();
        therapist.get(address(paper));
        therapist.post(address(paper), "version", "1", "id", id, "text", "Zebra.");
        String page = therapist.get(address(paper) + "/compare?from=1&to=2").body();
        assertThat(page).contains("<ins>Zebra.</ins>", "<del>");
        assertThat(therapist.get(address(paper) + "/compare?from=1&to=9").statusCode())
                .isEqualTo(404);
    }

    @Test
    void wordsOfAVisitAndTermsOfAPayerComeIntoThePaper() {
        String other = "/episodes/" + Charts.demoEpisode(SERVER, "Bjarne Holm");
        Visitor lead = SERVER.signedIn("lead");
        String page = lead.get(other + "/write").body();
        Matcher found = Pattern.compile(
                        "sections/paperwork\".{0,300}?name=\"version\" value=\"(\\d+)\"", Pattern.DOTALL)
                .matcher(page);
        assertThat(found.find()).isTrue();
        HttpResponse<String> kept = lead.post(
                other + "/sections/paperwork",
                "version",
                found.group(1),
                "paperwork.payer",
                "us-part-b",
                "paperwork.plan.weeks",
                "8",
                "paperwork.visits[0].number",
                "1",
                "paperwork.visits[0].told",
                "It tingles less on the stairs");
        assertThat(kept.statusCode()).isEqualTo(302);
        assertThat(lead.get(other + "/write").body()).contains("30 days after the first treatment day");
        String begun = TestServer.location(lead.post(other + "/papers", "kind", "visit-note"));
        assertThat(lead.get(begun).body()).contains("The person said: It tingles less on the stairs.");
        assertThat(lead.post(
                                other + "/sections/paperwork",
                                "version",
                                "1",
                                "paperwork.orderedOn",
                                "2026-02-31",
                                "paperwork.plan.weeks",
                                "99")
                        .body())
                .contains("must be a day of the calendar, was 2026-02-31", "must be at most 52");
    }
}
