package slipway.web.episode.examine;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Map;
import org.junit.jupiter.api.Test;
import slipway.care.record.content.Section;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;
import tools.jackson.databind.node.ObjectNode;

class ExamineTest {
    private static final TestServer SERVER = TestServer.shared();

    private final Visitor therapist = SERVER.signedIn("therapist");

    private static String begin(String name, String examination) {
        Map<Section, ObjectNode> sections =
                examination.isEmpty() ? Map.of() : Map.of(Section.EXAMINATION, Charts.json(examination));
        return Charts.begin(SERVER, name, sections).episode().id();
    }

    private HttpResponse<String> save(String id, long version, String... fields) {
        String[] all = new String[fields.length + 2];
        all[0] = "version";
        all[1] = Long.toString(version);
        System.arraycopy(fields, 0, all, 2, fields.length);
        return therapist.post("/episodes/" + id + "/sections/examination", all);
    }

    @Test
    void nothingIsSelectedWhereNothingWasTested() {
        String page =
                therapist.get("/episodes/" + begin("Untested", "") + "/examine").body();
        assertThat(page).contains("not tested").doesNotContain("<tr class=\" recorded\"");
        assertThat(page.split("<option value=\"[^\"]+\" selected")).hasSize(1);
    }

    @Test
    void aWrongResultIsNamedBesideItsFieldAndNothingIsKept() {
        String id = begin("Grade Seven", "");
        HttpResponse<String> answer = save(
                id,
                0,
                "examination.right.strength.hip_flexors",
                "7",
                "examination.left.strength.knee_extensors",
                "4",
                "examination.right.provocation.slr.degrees",
                "steep");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("id=\"m-examination.right.strength.hip_flexors\"")
                .contains("id=\"m-examination.right.provocation.slr.degrees\"")
                .contains("value=\"steep\"")
                .contains("<option value=\"7\" selected>")
                .contains("<option value=\"4\" selected>");
        assertThat(Charts.content(SERVER, id, Section.EXAMINATION).isEmpty()).isTrue();
    }

    @Test
    void aTestIsOneWordUntilAnAngleIsMeasured() {
        String id = begin("Angles", "");
        String at = "examination.right.provocation.";
        HttpResponse<String> answer = save(
                id,
                0,
                at + "slr.positive",
                "positive",
                at + "slr.degrees",
                "42,5",
                at + "slump.positive",
                "negative",
                at + "slump.degrees",
                "");
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(302);
        assertThat(Charts.content(SERVER, id, Section.EXAMINATION)
                        .at("/examination/right/provocation")
                        .toString())
                .isEqualTo("{\"slr\":{\"degrees\":42.5,\"positive\":\"yes\"},\"slump\":\"negative\"}");
        String page = therapist.get("/episodes/" + id + "/examine").body();
        assertThat(page).contains("value=\"42.5\"").contains("<option value=\"yes\" selected>positive</option>");
    }

    @Test
    void wordsOfAFileAreShownAndKept() {
        String id = begin(
                "From A File",
                "{\"examination\":{\"right\":{\"strength\":{\"hip flexors\":4,\"tibialis_anterior\":\"3/5\"},"
                        + "\"reflexes\":{\"achilles\":\"brisk\"},\"provocation\":{\"cough\":\"negative\"}}}}");
        String page = therapist.get("/episodes/" + id + "/examine").body();
        assertThat(page)
                .contains("hip flexors, right: 4")
                .contains("name=\"examination.right.strength.tibialis_anterior\"")
                .contains("<option value=\"brisk\" selected>increased</option>")
                .contains("name=\"examination.right.provocation.cough\"")
                .doesNotContain("name=\"examination.right.provocation.cough_leg_pain\"");
        HttpResponse<String> answer = save(
                id,
                1,
                "examination.right.strength.tibialis_anterior",
                "3/5",
                "examination.right.reflexes.achilles",
                "brisk",
                "examination.right.provocation.cough",
                "negative");
        assertThat(answer.statusCode()).isEqualTo(302);
        ObjectNode kept = Charts.content(SERVER, id, Section.EXAMINATION);
        assertThat(kept.at("/examination/right/strength/hip flexors").asInt()).isEqualTo(4);
        assertThat(kept.at("/examination/right/reflexes/achilles").asString()).isEqualTo("brisk");
    }

    @Test
    void theSecondOfTwoEditorsSeesBoth() {
        String id = begin("Two Editors", "");
        String field = "examination.right.reflexes.patellar";
        assertThat(save(id, 0, field, "normal").statusCode()).isEqualTo(302);
        HttpResponse<String> second = save(id, 0, field, "absent");
        assertThat(second.statusCode()).isEqualTo(409);
        assertThat(second.body()).contains("normal").contains("absent");
    }

    @Test
    void withoutAnswersToTheEmergencyQuestionsNothingIsProposed() {
        String page = therapist
                .get("/episodes/" + begin("Unscreened", "") + "/examine")
                .body();
        assertThat(page).contains("the emergency questions come first").contains("Nothing more is proposed.");
    }

    @Test
    void aRemoteMovementIsEnteredHereAndKeptWithItsTest() {
        String id = begin("Differentiated", "");
        String page = therapist.get("/episodes/" + id + "/examine").body();
        assertThat(page).contains("Structural differentiation");
        HttpResponse<String> short1 =
                therapist.post("/episodes/" + id + "/differentiation", "differentiation.test", "slump");
        assertThat(short1.statusCode()).isEqualTo(422);
        assertThat(short1.body())
                .contains("id=\"m-differentiation.joint\"")
                .contains("this test is not recorded yet")
                .contains("<option value=\"slump\" selected>");
        HttpResponse<String> same = differentiate(id, "knee");
        assertThat(same.statusCode()).isEqualTo(422);
        assertThat(same.body()).contains("must be another joint than the one that the test moves");
        assertThat(Charts.content(SERVER, id, Section.TOLERANCE).isEmpty()).isTrue();
        assertThat(differentiate(id, "neck").statusCode()).isEqualTo(302);
        assertThat(Charts.content(SERVER, id, Section.TOLERANCE)
                        .path("tests")
                        .path(0)
                        .path("remoteMovements"))
                .hasSize(1);
        assertThat(therapist.get("/episodes/" + id + "/examine").body())
                .contains("Slump, right: neck moved, symptom eased");
    }

    private HttpResponse<String> differentiate(String id, String joint) {
        String at = "differentiation.";
        return therapist.post(
                "/episodes/" + id + "/differentiation",
                at + "test",
                "slump",
                at + "side",
                "right",
                at + "onsetDeg",
                "30",
                at + "symptom",
                "tingling",
                at + "familiar",
                "yes",
                at + "joint",
                joint,
                at + "fromDeg",
                "20",
                at + "toDeg",
                "0",
                at + "limbHeld",
                "yes",
                at + "change",
                "eased");
    }

    @Test
    void whatContradictsIsSaidBesideBothFields() {
        String id = begin("Contradicted", "");
        HttpResponse<String> answer = save(
                id, 0, "examination.right.reflexes.achilles", "absent", "examination.right.reflexes.ankle", "normal");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains(
                        "contradicts",
                        "id=\"m-examination.right.reflexes.achilles\"",
                        "id=\"m-examination.right.reflexes.ankle\"");
    }
}
