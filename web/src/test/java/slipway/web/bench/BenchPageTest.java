package slipway.web.bench;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.net.http.HttpResponse;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import slipway.web.Browser;
import slipway.web.TestServer;
import slipway.web.demo.DemoClinic;

class BenchPageTest {
    private static final TestServer SERVER = TestServer.shared();

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
    void theBenchAnswersADrag() {
        try (Browser browser = new Browser();
                BrowserContext context = browser.get().newContext()) {
            Page page = context.newPage();
            page.navigate(SERVER.address() + "/sign-in");
            page.locator("[name=login]").fill("therapist");
            page.locator("[name=password]").fill(Objects.requireNonNull(DemoClinic.SIGN_INS.get("therapist")));
            page.locator("main button[type=submit]").click();
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
