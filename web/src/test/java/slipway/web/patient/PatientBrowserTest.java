package slipway.web.patient;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipway.care.record.access.AccessLink;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.follow.Alert;
import slipway.care.record.follow.CheckIn;
import slipway.web.Browser;
import slipway.web.Charts;
import slipway.web.TestServer;
import tools.jackson.databind.node.ObjectNode;

/** The person at home with a phone in a real browser, with and without network. */
class PatientBrowserTest {
    @TempDir
    static Path folder;

    private static TestServer server;
    private static Browser browser;

    @BeforeAll
    static void open() {
        server = new TestServer(folder, true);
        browser = new Browser();
    }

    @AfterAll
    static void close() {
        browser.close();
        server.close();
    }

    private static BrowserContext phone(int width) {
        return browser.get()
                .newContext(new NewContextOptions()
                        .setViewportSize(width, 740)
                        .setHasTouch(true)
                        .setReducedMotion(ReducedMotion.REDUCE));
    }

    /** A new code for somebody of the demo, as it stands in the QR code. */
    private static String code(String episodeId) {
        return code(episodeId, Instant.now().plus(Duration.ofDays(9)));
    }

    private static String code(String episodeId, Instant expires) {
        int plan =
                Charts.open(server, episodeId).plans().released().orElseThrow().number();
        return server.address() + "/p/"
                + Charts.code(server, episodeId, LinkPurpose.GUIDE, OptionalInt.of(plan), expires, false);
    }

    private static Page opened(BrowserContext context, String episodeId) {
        Page page = context.newPage();
        page.navigate(code(episodeId));
        page.locator("main button.main").click();
        assertThat(page).hasURL(Pattern.compile("/home$"));
        // Until the worker has its copies.
        page.waitForFunction("async () => (await navigator.serviceWorker.ready) && navigator.serviceWorker.controller"
                + " && (await caches.match('/home/guide.html')) && true");
        return page;
    }

    private static void tap(Page page, String name, String value) {
        page.locator("[data-session] label:has([name=%s][value='%s'])".formatted(name, value))
                .click();
    }

    private static Locator send(Page page) {
        return page.locator("[data-session] button[name=none]");
    }

    private static void noViolations(Page page) {
        assertThat(new AxeBuilder(page).analyze().getViolations())
                .as("axe at %s", page.url())
                .isEmpty();
        int over = ((Number) page.evaluate("document.documentElement.scrollWidth - innerWidth")).intValue();
        assertThat(over).as("wider than the phone at %s", page.url()).isLessThanOrEqualTo(0);
    }

    private static List<CheckIn> reports(String episodeId) {
        return Charts.open(server, episodeId).checkIns().list();
    }

    private static List<Alert> alerts(String episodeId) {
        return Charts.open(server, episodeId).checkIns().alerts();
    }

    @Test
    void fromTheQrCodeToTheAnswerInFiveTaps() {
        String id = Charts.demoEpisode(server, "Alma");
        int known = reports(id).size();
        try (BrowserContext context = phone(360)) {
            Page page = opened(context, id);
            noViolations(page);
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Start the exercises"))
                    .click();
            noViolations(page);
            page.locator("label:has([name=before][value='2'])").click();
            var guide = page.frameLocator("iframe");
            assertThat(guide.locator("html")).hasClass(Pattern.compile("still"));
            noViolations(page);
            page.locator(".guide-bar a").click();
            assertThat(page.locator("[name=before][value='2']")).isChecked();

            tap(page, "worst", "2");
            tap(page, "kind", "tingling");
            tap(page, "settle", "2");
            assertThat(page.locator("[data-field=reach]")).isHidden();
            assertThat(page.locator("[data-field=usualPain]")).isHidden();
            noViolations(page);
            send(page).click();
            assertThat(page.locator("[data-answer]")).containsText("Your answer");
            noViolations(page);
        }
        assertThat(reports(id)).hasSize(known + 1);
        ObjectNode body = reports(id).get(known).body();
        assertThat(body.path("before").asString()).isEqualTo("2");
        assertThat(body.path("worst").asString()).isEqualTo("2");
        assertThat(body.path("repetitions_assumed").asString()).isEqualTo("yes");
    }

    @Test
    void whatWasToldWithoutNetworkIsKeptAndCountedOnceWhenItComesBack() {
        String id = Charts.demoEpisode(server, "Alma");
        int known = reports(id).size();
        try (BrowserContext context = phone(390)) {
            Page page = opened(context, id);
            tap(page, "before", "1");
            tap(page, "worst", "6");
            context.setOffline(true);
            page.reload();
            assertThat(page.locator("[data-status]")).containsText("You are offline");
            assertThat(page.locator("[name=worst][value='6']")).isChecked();
            tap(page, "kind", "tingling");
            tap(page, "settle", "10");
            send(page).click();
            assertThat(page.locator("[data-answer=phone]")).containsText("Your clinic has NOT got it yet");
            assertThat(page.locator("[data-answer=phone]")).containsText("Wait till you feel as usual");
            noViolations(page);
            page.locator("main a.button").click();
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Start the exercises"))
                    .click();
            page.locator("[data-skip]").click();
            assertThat(page.frameLocator("iframe").locator("h1")).containsText("Alma");
            assertThat(reports(id)).hasSize(known);

            // The report arrives, its answer is lost on the way: the phone must send it again.
            page.route("**/home/report", route -> {
                route.fetch();
                route.abort();
            });
            context.setOffline(false);
            page.navigate(server.address() + "/home");
            page.waitForCondition(() -> reports(id).size() == known + 1);
            page.unroute("**/home/report");
            page.reload();
            page.waitForFunction("async () => (await outbox.all()).length === 0");
            assertThat(page.locator("[data-status]")).isEmpty();
        }
        assertThat(reports(id)).hasSize(known + 1);
        CheckIn report = reports(id).get(known);
        assertThat(OffsetDateTime.parse(report.body().path("reported_at").asString())
                        .toInstant())
                .isBeforeOrEqualTo(report.receivedAt());
    }

    @Test
    void anEmergencyWithoutNetworkIsAnsweredAtOnceLocksThePhoneAndReachesTheClinicLater() {
        String id = Charts.demoEpisode(server, "Bjarne");
        int before = alerts(id).size();
        try (BrowserContext context = phone(390)) {
            Page page = opened(context, id);
            context.setOffline(true);
            page.locator("[data-session] [name=emergency]").check();
            Locator alarm = page.locator("[data-session] [data-emergency]");
            assertThat(alarm).containsText("Go to the emergency department or call 911 now.");
            assertThat(alarm).containsText("Your clinic has NOT got this");
            assertThat(alarm.locator("a[href='tel:911']")).isVisible();
            noViolations(page);
            // The copy on the phone is locked, whichever way it is asked for.
            assertThat(page.locator("[data-hold]").first()).isVisible();
            page.navigate(server.address() + "/home/guide.html");
            assertThat(page).hasURL(Pattern.compile("/home$"));
            assertThat(page.locator("a[href='/home/guide']")).isHidden();

            context.setOffline(false);
            page.reload();
            page.waitForCondition(() -> alerts(id).size() == before + 1);
            page.reload();
            assertThat(page.locator("[data-hold]").first()).isVisible();
            assertThat(page.locator("a[href='/home/guide']")).hasCount(0);
            page.locator("[data-session] [data-mistake]").click();
            assertThat(page.locator("[data-session] [data-emergency-state]"))
                    .containsText("Your clinic knows that it was a mistake");
        }
        assertThat(alerts(id))
                .hasSize(before + 2)
                .allMatch(alert -> alert.acknowledged().isEmpty() || before > 0);
        assertThat(reports(id)
                        .get(reports(id).size() - 1)
                        .body()
                        .path("emergency")
                        .asString())
                .isEqualTo("mistake");
    }

    @Test
    void inSpanishEverythingIsInSpanish() {
        String id = Charts.demoEpisode(server, "Rosario");
        try (BrowserContext context = phone(360)) {
            Page page = opened(context, id);
            assertThat(page.locator("html")).hasAttribute("lang", "es");
            assertThat(page.locator("main")).not().containsText(Pattern.compile("\\b(the|your|you|clinic)\\b"));
            assertThat(send(page)).hasText("Nada de esto. Enviar.");
            noViolations(page);
            page.locator("a.language").click();
            assertThat(page.locator("html")).hasAttribute("lang", "en");
            page.navigate(server.address() + "/home");
            assertThat(page.locator("html")).hasAttribute("lang", "en");
        }
    }

    @Test
    void aRevokedAndAnExpiredCodeEndAtOnceAndTakeTheCopiesAlong() {
        String id = Charts.demoEpisode(server, "Alma");
        try (BrowserContext context = phone(360)) {
            Page page = opened(context, id);
            AccessLink newest =
                    server.records().links().list(id, Charts.therapist(server)).get(0);
            server.records().links().revoke(newest.id(), Charts.therapist(server));
            page.navigate(server.address() + "/home");
            assertThat(page).hasURL(Pattern.compile("/p$"));
            assertThat(page.locator("main")).containsText("Ask your clinic for a new one");
            noViolations(page);
            assertThat(page.evaluate("async () => Boolean(await caches.match('/home/guide.html'))"))
                    .isEqualTo(false);
            page.navigate(code(id, Instant.now().minusSeconds(1)));
            assertThat(page).hasURL(Pattern.compile("/p$"));
        }
    }

    @Test
    void aScreenReaderHearsWhatEachQuestionIs() {
        try (BrowserContext context = phone(390)) {
            Page page = opened(context, Charts.demoEpisode(server, "Alma"));
            for (String question : List.of(
                    "How strong was it before? 0 is none, 10 is the worst.",
                    "How many did you do?",
                    "How strong at the worst?",
                    "What did you feel most?",
                    "How long until it was gone?",
                    "Do you have any of these now?")) {
                assertThat(page.getByRole(
                                        AriaRole.GROUP,
                                        new Page.GetByRoleOptions()
                                                .setName(question)
                                                .setExact(true))
                                .last())
                        .isVisible();
            }
            send(page).click();
            // What is missing is said beside the question, and nothing is sent.
            assertThat(page.locator("[data-field=before] [role=alert]")).containsText("how strong it was before");
            assertThat(page.locator("[name=before][value='0']")).isFocused();
        }
    }
}
