package slipway.web.intake;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.intake.Intake;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Side;
import slipway.web.Browser;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.told.Questions;

/** The questions before the first visit on a small phone, without scripts. */
class IntakeBrowserTest {
    @TempDir
    static Path folder;

    @Test
    void fromTheAddressToDoneInSpanish() {
        try (var server = new TestServer(folder, true);
                var browser = new Browser();
                BrowserContext context = browser.get()
                        .newContext(new NewContextOptions()
                                .setViewportSize(360, 740)
                                .setHasTouch(true)
                                .setLocale("es-MX"))) {
            var act = Charts.therapist(server);
            var person = server.records().people().add(Charts.details("Zulema Ponte"), act);
            String id = server.records()
                    .charts()
                    .begin(person.id(), Side.RIGHT, act.userId(), Map.of(), act)
                    .episode()
                    .id();
            String token = code(server, id);
            Page page = context.newPage();
            page.navigate(server.address() + "/p/" + token + "?language=es");
            assertThat(page.locator("h1")).containsText("Antes de su primera visita");
            noViolations(page);
            page.locator("main button.main").click();
            noViolations(page);
            page.locator("main a.main").click();
            for (int step = 1; step <= Questions.STEPS; step++) {
                assertThat(page).hasURL(Pattern.compile("/before/" + step + "$"));
                for (Locator danger : page.locator("fieldset.danger").all()) {
                    danger.locator("label:has([value=no])").click();
                }
                page.locator("label:has([value=r-calf])").all().forEach(Locator::click);
                page.locator("textarea").all().forEach(text -> text.fill("Al levantar una caja"));
                noViolations(page);
                assertThat(page.locator(".at-yes:visible").count()).isZero();
                if (step == 2) {
                    page.reload();
                    page.locator("button[value=back]").click();
                    assertThat(page.locator("[name=saddleNumbness][value=no]")).isChecked();
                    page.locator("button.main").click();
                    // The help stands there at the tap, before anything is sent.
                    Locator stroke = page.locator("#q-strokeSigns");
                    stroke.locator("label:has([value=yes])").click();
                    assertThat(stroke.locator(".at-yes a.main")).isVisible();
                    assertThat(stroke.locator(".at-yes")).containsText("aún NO lo sabe");
                    noViolations(page);
                    page.locator("fieldset.danger label:has([value=no])").all().forEach(Locator::click);
                }
                page.locator("main form button.main").click();
            }
            assertThat(page.locator("h1")).hasText("Gracias");
            noViolations(page);
            Intake told = Charts.open(server, id).intakes().list().get(0);
            assertThat(told.whole()).isTrue();
            assertThat(told.language()).isEqualTo(Language.ES);
            assertThat(told.answers().path("where").toString()).isEqualTo("[\"r-calf\"]");
            assertThat(told.answers().path("strokeSigns").asString()).isEqualTo("no");
        }
    }

    /** With a script the page stays when the answer does not come; what was typed is sent by the next tap, once. */
    @Test
    void whatWasTypedOutlivesACutNetworkAndAFaultOfTheServer(@TempDir Path other) {
        try (var server = new TestServer(other, true);
                var browser = new Browser();
                BrowserContext context = browser.get().newContext(new NewContextOptions().setViewportSize(360, 740))) {
            String id = Charts.begin(server, "Ida Falk", Map.of()).episode().id();
            String token = code(server, id);
            Page page = context.newPage();
            page.navigate(server.address() + "/p/" + token);
            page.locator("main button.main").click();
            page.navigate(server.address() + "/before/11");
            page.locator("#goal").fill("to dance again");
            context.setOffline(true);
            page.locator("button.main").click();
            assertThat(page.locator("[data-lost]")).containsText("no network");
            assertThat(page.locator("[data-danger]").first()).isHidden();
            assertThat(page.locator("#goal")).hasValue("to dance again");
            noViolations(page);
            context.setOffline(false);
            page.route("**/before/11", route -> route.fulfill(new Route.FulfillOptions().setStatus(502)));
            page.locator("button.main").click();
            assertThat(page.locator("[data-lost]")).containsText("did not work");
            page.unroute("**/before/11");
            page.locator("button.main").click();
            assertThat(page).hasURL(Pattern.compile("/before/12$"));
            page.locator("button[value=back]").click();
            assertThat(page.locator("#goal")).hasValue("to dance again");

            // A sign of danger that could not be sent says so, and whom to call.
            page.navigate(server.address() + "/before/1");
            page.locator("label:has([name=saddleNumbness][value=yes])").click();
            context.setOffline(true);
            page.locator("button.main").click();
            assertThat(page.locator("[data-lost]")).containsText("has NOT got this");
            assertThat(page.locator("[data-lost] a[href='tel:911']")).isVisible();
            context.setOffline(false);
            page.locator("button.main").click();
            assertThat(page.locator("h1")).hasText("Get help now");
            page.goBack();
            page.locator("button.main").click();
            assertThat(page).hasURL(Pattern.compile("/before/2$"));
            assertThat(Charts.open(server, id).checkIns().alerts()).hasSize(1);

            // Wrong answers come back beside their fields, and "Done" twice keeps one.
            page.navigate(server.address() + "/before/7");
            page.locator("#sinceCount").fill("some");
            page.locator("button.main").click();
            assertThat(page.locator(".mistakes")).containsText("Write a number");
            page.navigate(server.address() + "/before/12");
            Page twice = context.newPage();
            twice.navigate(server.address() + "/before/12");
            page.locator("button.main").click();
            assertThat(page.locator("h1")).hasText("Thank you");
            twice.locator("button.main").click();
            assertThat(twice.locator("h1")).hasText("Thank you");
            assertThat(Charts.open(server, id).intakes().list())
                    .filteredOn(Intake::whole)
                    .hasSize(1);
        }
    }

    private static String code(TestServer server, String episodeId) {
        return Charts.code(server, episodeId, LinkPurpose.INTAKE, Instant.now().plus(Duration.ofDays(1)));
    }

    private static void noViolations(Page page) {
        assertThat(new AxeBuilder(page).analyze().getViolations())
                .as("axe at %s", page.url())
                .isEmpty();
        int over = ((Number) page.evaluate("document.documentElement.scrollWidth - innerWidth")).intValue();
        assertThat(over).as("wider than the phone at %s", page.url()).isLessThanOrEqualTo(0);
    }
}
