package slipway.web.episode.write;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.util.Objects;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import slipway.web.Browser;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.demo.DemoClinic;

/** From a draft to a signed paper on paper, in a real browser. */
class WriteBrowserTest {
    private static final TestServer SERVER = TestServer.shared();

    private static void press(Page page, String name) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(name).setExact(true))
                .first()
                .click();
    }

    private static void noViolations(Page page) {
        assertThat(new AxeBuilder(page).analyze().getViolations())
                .as("axe at %s", page.url())
                .isEmpty();
    }

    @Test
    void draftEditSignPrint() throws IOException {
        try (Browser browser = new Browser();
                BrowserContext context = browser.get().newContext()) {
            Page page = context.newPage();
            page.navigate(SERVER.address() + "/sign-in");
            page.getByLabel("Sign-in name").fill("therapist");
            page.getByLabel("Password").fill(Objects.requireNonNull(DemoClinic.SIGN_INS.get("therapist")));
            press(page, "Sign in");
            page.navigate(SERVER.address() + "/episodes/" + Charts.demoEpisode(SERVER, "Alma Ferrer") + "/write");
            noViolations(page);
            page.locator("li:has-text(\"Letter to the referrer\") button").click();
            assertThat(page).hasURL(Pattern.compile("/papers/"));
            Locator blank = page.locator(".sentence.blank textarea").first();
            assertThat(blank).hasValue(Pattern.compile(".*not recorded\\."));
            blank.fill("Symptoms of the leg for nine weeks.");
            page.locator("[name='strike']").last().check();
            noViolations(page);
            press(page, "Save the draft");
            assertThat(page.getByText("changed by hand")).isVisible();
            press(page, "Sign");
            assertThat(page.locator("main h2 + .state")).hasText("Signed");
            noViolations(page);
            APIResponse pdf = context.request().get(page.url() + "/paper.pdf");
            assertThat(pdf.headers()).containsEntry("content-type", "application/pdf");
            try (var read = Loader.loadPDF(pdf.body())) {
                String text = new PDFTextStripper().getText(read).replaceAll("\\s+", " ");
                assertThat(text)
                        .contains("Symptoms of the leg for nine weeks.", "Load ruler", "Signed by Mara Lindholm")
                        .doesNotContain("Please tell us of any finding");
            }
        }
    }
}
