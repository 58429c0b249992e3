package slipway.web.episode;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import slipway.web.Browser;
import slipway.web.TestServer;
import slipway.web.demo.DemoClinic;

/** The work of a therapist in a real browser. */
class VisitBrowserTest {
    private static final TestServer SERVER = TestServer.shared();

    private static Browser browser;

    @BeforeAll
    static void open() {
        browser = new Browser();
    }

    @AfterAll
    static void close() {
        browser.close();
    }

    private static Page signedIn(BrowserContext context) {
        Page page = context.newPage();
        signIn(page);
        return page;
    }

    private static void signIn(Page page) {
        page.navigate(SERVER.address() + "/sign-in");
        page.getByLabel("Sign-in name").fill("therapist");
        page.getByLabel("Password").fill(Objects.requireNonNull(DemoClinic.SIGN_INS.get("therapist")));
        press(page, "Sign in");
        assertThat(page).hasURL(Pattern.compile("/today"));
    }

    private static void press(Page page, String name) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name))
                .first()
                .click();
    }

    private static void noViolations(Page page) {
        assertThat(new AxeBuilder(page).analyze().getViolations())
                .as("axe at %s", page.url())
                .isEmpty();
    }

    /** A new person with the side of the trouble; answers the address of the episode. */
    private static String newEpisode(Page page, String name) {
        page.navigate(SERVER.address() + "/people/new");
        page.locator("[name=name]").fill(name);
        page.locator("[name=ageYears]").fill("47");
        page.locator("[name=stature]").fill("174");
        page.locator("main button.main").click();
        assertThat(page.locator("main h1")).hasText(name);
        page.locator("form.row input[value=right]").check();
        page.locator("form.row button.main[type=submit]").click();
        assertThat(page).hasURL(Pattern.compile("/episodes/[^/]+/history"));
        return page.url().replace("/history", "");
    }

    @Test
    void theWholeVisitFromSignInToTheSheet() {
        try (BrowserContext context = browser.get().newContext()) {
            Page page = signedIn(context);
            String episode = newEpisode(page, "Visit Person");
            page.locator("[name='history.onset']").fill("after a long drive");
            page.locator("[name='abilities.canLieOnFloor'][value=yes]").check();
            page.locator("[name='abilities.canHoldStrap'][value=yes]").check();
            noViolations(page);
            press(page, "Save and go on to Screen");

            for (Locator rest : page.locator("[data-rest]").all()) {
                rest.click();
            }
            noViolations(page);
            press(page, "Save and go on to Examine");

            page.navigate(episode + "/tolerance");
            page.locator("[name='tests[0].onsetDeg']").fill("58");
            page.locator("[name='tests[0].restingSymptom']").fill("0");
            page.locator("[name='tests[0].symptom']").selectOption("tingling");
            page.locator("[name='tests[0].familiar']").selectOption("yes");
            page.locator("[name='tests[1].negativeUpToDeg']").fill("80");
            page.locator("[name='irritability.worstPain']").fill("4");
            page.locator("[name='irritability.usualPain']").fill("2");
            page.locator("[name='irritability.restPain']").fill("0");
            page.locator("[name='irritability.nightPain']").fill("0");
            page.locator("[name='irritability.settleMinutes']").fill("5");
            page.locator("[name='irritability.judgement'][value=low]").check();
            page.locator("[name='comfortablePositions'][value='lying']").check();
            page.locator("[name='comfortablePositions'][value='lying knees bent']")
                    .check();
            noViolations(page);
            press(page, "Save and go on to Plan");

            assertThat(page).hasURL(Pattern.compile("/plan$"));
            noViolations(page);
            press(page, "Accept this plan");
            assertThat(page).hasURL(Pattern.compile("/try$"));
            noViolations(page);
            tryFirst(page);
            press(page, "Make the sheet");
            Locator sheet = page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Sheet for home (PDF)"));
            APIResponse pdf =
                    context.request().get(SERVER.address() + sheet.first().getAttribute("href"));
            assertThat(pdf.headers()).containsEntry("content-type", "application/pdf");
            assertThat(new String(pdf.body(), 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
        }
    }

    private static void tryFirst(Page page) {
        Locator form = page.locator("form[action$='/tries']").first();
        form.locator("[name=repetitions]").fill("5");
        form.locator("[name=worst]").fill("1");
        form.locator("[name=settleMinutes]").fill("1");
        form.locator("button.main").click();
    }

    @Test
    void twoBrowsersEditingOneEpisodeTheSecondSeesBothAndLosesNothing() {
        try (BrowserContext first = browser.get().newContext();
                BrowserContext second = browser.get().newContext()) {
            Page one = signedIn(first);
            String episode = newEpisode(one, "Twice Person");
            Page two = signedIn(second);
            two.navigate(episode + "/history");
            one.locator("[name='history.work']").fill("gardener");
            press(one, "Save and go on to Screen");
            two.locator("[name='history.work']").fill("baker");
            press(two, "Save");
            assertThat(two.locator("main")).containsText("gardener");
            assertThat(two.locator("main")).containsText("baker");
            noViolations(two);
            press(two, "Save mine on top");
            two.navigate(episode + "/history");
            assertThat(two.locator("[name='history.work']")).hasValue("baker");
        }
    }

    @Test
    void aSessionThatIdlesOutDuringAnEntryLosesNothing() {
        try (BrowserContext context = browser.get().newContext()) {
            context.clock().install();
            Page page = signedIn(context);
            String episode = newEpisode(page, "Idle Person");
            page.locator("[name='history.onset']").fill("began on the stairs");
            page.clock().fastForward("14:30");
            assertThat(page.locator(".idle")).isVisible();
            page.clock().fastForward("01:00");
            assertThat(page).hasURL(Pattern.compile("/sign-in"));
            signIn(page);
            page.navigate(episode + "/history");
            assertThat(page.locator("[name='history.onset']")).hasValue("began on the stairs");
            assertThat(page.locator("main")).containsText("not saved yet");
            press(page, "Save");
            page.navigate(episode + "/history");
            assertThat(page.locator("main")).not().containsText("not saved yet");
            assertThat(page.locator("[name='history.onset']")).hasValue("began on the stairs");
        }
    }
}
