package slipway.web.shell;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.caseload.TodayRow;
import slipway.web.Browser;
import slipway.web.TestServer;
import slipway.web.demo.DemoClinic;
import slipway.web.episode.Step;

/** Every page of the demo, narrow and dark, wide and light, and with text twice as large. */
class EveryPageBrowserTest {
    private static final TestServer SERVER = TestServer.shared();
    private static final String LEAD = "lead";

    private static Browser browser;
    private static String signedIn;

    @BeforeAll
    static void open() {
        browser = new Browser();
        try (BrowserContext context = browser.get().newContext()) {
            Page page = context.newPage();
            page.navigate(SERVER.address() + "/sign-in");
            page.locator("[name=login]").fill(LEAD);
            page.locator("[name=password]").fill(Objects.requireNonNull(DemoClinic.SIGN_INS.get(LEAD)));
            page.locator("main button.main[type=submit]").click();
            page.waitForURL("**/today");
            signedIn = context.storageState();
        }
    }

    @AfterAll
    static void close() {
        browser.close();
    }

    @ParameterizedTest
    @CsvSource({"390, DARK, 1", "1440, LIGHT, 1", "1024, LIGHT, 2"})
    void noViolationsAndNothingSticksOut(int width, ColorScheme scheme, int textSize) {
        var options = new NewContextOptions()
                .setViewportSize(width, 900)
                .setColorScheme(scheme)
                .setStorageState(signedIn);
        var wrong = new ArrayList<String>();
        try (BrowserContext context = browser.get().newContext(options)) {
            Page page = context.newPage();
            page.onConsoleMessage(message -> {
                if (message.type().equals("error")) {
                    wrong.add(page.url() + " says " + message.text());
                }
            });
            for (String path : paths()) {
                page.navigate(SERVER.address() + path);
                if (textSize > 1) {
                    page.evaluate("size => { document.documentElement.style.fontSize = size * 100 + '%'; }", textSize);
                }
                int over = ((Number) page.evaluate("document.documentElement.scrollWidth - innerWidth")).intValue();
                if (over > 0) {
                    wrong.add(path + " is " + over + " px wider than the window");
                }
                new AxeBuilder(page)
                        .analyze()
                        .getViolations()
                        .forEach(rule -> wrong.add(path + " " + rule.getId() + " "
                                + rule.getNodes().get(0).getHtml()));
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static List<String> paths() {
        List<String> paths = new ArrayList<>(List.of("/people", "/people/new", "/account"));
        Area.openTo(java.util.EnumSet.of(Role.LEAD)).forEach(area -> paths.add(area.address()));
        paths.add("/clinic/trail");
        List<TodayRow> rows = rows();
        for (Step step : Step.values()) {
            // One with everything, one with nothing, one who must not go on.
            rows.stream()
                    .filter(row -> row.name().startsWith("Alma")
                            || row.name().startsWith("Ines")
                            || row.name().startsWith("Walter"))
                    .forEach(row -> paths.add("/episodes/" + row.episodeId() + "/" + step.key()));
        }
        return paths;
    }

    private static List<TodayRow> rows() {
        StaffAccount lead =
                SERVER.records().staff().credentials(LEAD).orElseThrow().account();
        var act = new Act(lead.id(), Role.LEAD, lead.clinicId(), java.time.Instant.now());
        return SERVER.records().caseload().today(100, act);
    }
}
