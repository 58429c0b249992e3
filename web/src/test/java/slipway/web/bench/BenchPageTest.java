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
    void valuesComeAsAFileWithMoreLoadInARaisedLeg() {
        TestServer.Visitor therapist = SERVER.signedIn("therapist");
        String csv = therapist.get("/bench/values.csv").body();
        assertThat(csv.lines().count()).isGreaterThan(10);
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
