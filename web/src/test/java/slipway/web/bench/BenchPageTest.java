package slipway.web.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.net.http.HttpResponse;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Language;
import slipway.web.Browser;
import slipway.web.TestServer;
import slipway.web.demo.DemoClinic;
import slipway.web.gallery.Names;

class BenchPageTest {
    private static final TestServer SERVER = TestServer.shared();

    private static final Pattern EPISODES = Pattern.compile("/episodes/([0-9a-f-]{36})");
    private static final Pattern BENCH = Pattern.compile("href=\"(/bench\\?episode=[^\"]+)\"");

    @Test
    void everyMistakeOfAnAddressIsNamed() {
        HttpResponse<String> answer =
                SERVER.signedIn("therapist").get("/bench?hip=abc&stature=9&exercise=glide-ankel-lying");
        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.body()).contains("glide-ankle-lying").contains("9");
    }

    @Test
    void valuesComeAsAFileAndARaisedLegLoadsMore() {
        TestServer.Visitor therapist = SERVER.signedIn("therapist");
        String flat = therapist.get("/bench/values.csv?position=lying").body();
        String raised = therapist.get("/bench/values.csv?position=lying&hip=60").body();
        assertThat(load(raised)).isGreaterThan(load(flat) + 1);
    }

    /** Median load at the gluteal place. */
    private static double load(String csv) {
        String header =
                csv.lines().filter(line -> line.contains("loadPct")).findFirst().orElseThrow();
        int column = java.util.Arrays.asList(header.split(",", -1)).indexOf("loadPct");
        assertThat(column).as(header).isNotNegative();
        String row = csv.lines()
                .filter(line -> line.contains("deep gluteal space"))
                .findFirst()
                .orElseThrow();
        return Double.parseDouble(row.split(",", -1)[column]);
    }

    @Test
    void anExerciseOfTheFrontIsPlayedOnItsOwnNerveAndSaysThatItIsNotValidated() {
        TestServer.Visitor therapist = SERVER.signedIn("therapist");
        String back = therapist.get("/bench/motion?exercise=glide-knee-sitting").body();
        String front = therapist
                .get("/bench/motion?exercise=glide-front-knee-prone&site=deep+gluteal+space")
                .body();
        assertThat(back).contains("deep gluteal space").doesNotContain("Not validated");
        assertThat(front).contains("Not validated").doesNotContain("deep gluteal space");
    }

    /** A form sends its own fields only: each of the two carries what the other one asked. */
    @Test
    void withoutScriptsPostureAndExerciseCarryEachOther() {
        String page = SERVER.signedIn("therapist")
                .get("/bench?position=slump&knee=20&compare=b&b-position=prone&side=left&exercise=glide-knee-sitting")
                .body();
        int motion = page.indexOf("id=\"motion-form\"");
        assertThat(page.substring(motion))
                .contains("name=\"position\" value=\"slump\"")
                .contains("name=\"knee\" value=\"20\"")
                .contains("name=\"b-position\" value=\"prone\"")
                .contains("name=\"side\" value=\"left\"");
        assertThat(page.substring(0, motion)).contains("name=\"exercise\" value=\"glide-knee-sitting\"");
    }

    @Test
    void theChooserSaysHowTheBodyLiesInWords() {
        String page = SERVER.signedIn("therapist").get("/bench").body();
        for (Exercise exercise : Catalogue.bundled().list()) {
            assertThat(page).contains(">" + exercise.name().in(Language.EN) + ", " + Names.position(exercise) + "<");
        }
    }

    @Test
    void anEpisodeLendsItsBodyAndItsLoadRulerOnlyToWhoMayOpenIt() {
        TestServer.Visitor therapist = SERVER.signedIn("therapist");
        Matcher link = EPISODES.matcher(therapist.get("/today").body())
                .results()
                .map(found -> found.group(1))
                .distinct()
                .map(id ->
                        BENCH.matcher(therapist.get("/episodes/" + id + "/plan").body()))
                .filter(Matcher::find)
                .findFirst()
                .orElseThrow();
        String address = link.group(1).replace("&amp;", "&");
        assertThat(address).contains("stature=", "site=");
        String flat = therapist.get(address).body();
        assertThat(flat).contains("data-part=\"ruler\"", "<title", "This posture");
        assertThat(ruler(therapist, address, "")).isNotEqualTo(ruler(therapist, address, "&hip=60"));
        assertThat(therapist
                        .get(address.replace("/bench?", "/bench/answer?") + "&draws=few")
                        .body())
                .doesNotContain("data-part=\"ruler\"");
        assertThat(therapist.get("/bench?episode=none").statusCode()).isEqualTo(404);
    }

    /** The ruler of an answer, as drawn. */
    private static String ruler(TestServer.Visitor therapist, String address, String angle) {
        String page = therapist
                .get(address.replace("/bench?", "/bench/answer?") + angle)
                .body();
        int from = page.indexOf("data-part=\"ruler\"");
        assertThat(from).isPositive();
        return page.substring(from, page.indexOf("</section>", from));
    }

    @Test
    void theBenchAnswersADrag() {
        try (Browser browser = new Browser();
                BrowserContext context = browser.get().newContext()) {
            Page page = context.newPage();
            page.navigate(SERVER.address() + "/sign-in");
            page.locator("[name=login]").fill("therapist");
            page.locator("[name=password]").fill(Objects.requireNonNull(DemoClinic.SIGN_INS.get("therapist")));
            page.locator("main button.main[type=submit]").click();
            page.waitForURL("**/today");
            page.navigate(SERVER.address() + "/bench");
            Locator dot = page.locator("circle[data-joint]:visible").last();
            String before = page.locator("main table").first().innerText();
            var box = Objects.requireNonNull(dot.boundingBox());
            page.mouse().move(box.x + box.width / 2, box.y + box.height / 2);
            page.mouse().down();
            page.mouse().move(box.x - 60, box.y - 160, new com.microsoft.playwright.Mouse.MoveOptions().setSteps(8));
            page.mouse().up();
            PlaywrightAssertions.assertThat(page.locator("main table").first())
                    .not()
                    .hasText(before);
            page.waitForFunction("text => document.querySelector('main table').innerText !== text", before);
        }
    }
}
