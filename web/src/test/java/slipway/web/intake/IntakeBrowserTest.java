package slipway.web.intake;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.OptionalInt;
import java.util.UUID;
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
import slipway.web.episode.Cases;
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
            String token = UUID.randomUUID().toString();
            server.records()
                    .links()
                    .add(
                            id,
                            LinkPurpose.INTAKE,
                            OptionalInt.empty(),
                            Cases.digest(token),
                            Instant.now().plus(Duration.ofDays(1)),
                            false,
                            act);
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

    private static void noViolations(Page page) {
        assertThat(new AxeBuilder(page).analyze().getViolations())
                .as("axe at %s", page.url())
                .isEmpty();
        int over = ((Number) page.evaluate("document.documentElement.scrollWidth - innerWidth")).intValue();
        assertThat(over).as("wider than the phone at %s", page.url()).isLessThanOrEqualTo(0);
    }
}
