package slipway.documents.guide;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import slipway.exercises.exercise.Language;

/** The guide as a person has it: opened from a file, on a small phone, without a network; time is the test's. */
@Timeout(60)
abstract class GuideInABrowser {
    static final int PHONE_WIDTH = 360;
    static final int PHONE_HEIGHT = 740;
    static final int READY_MS = 5_000;
    /** Three seconds each way. */
    static final int MOVEMENT_MS = 6_000;

    static Browser browser;

    final List<String> complaints = new ArrayList<>();
    final List<String> requests = new ArrayList<>();
    BrowserContext context;
    Page page;

    @TempDir
    static Path folder = Path.of("");

    @BeforeAll
    static void start() throws IOException {
        browser = new Browser();
        for (Language language : Language.values()) {
            Files.writeString(file(language), SampleGuides.page(language));
        }
    }

    @AfterAll
    static void stop() {
        browser.close();
    }

    @BeforeEach
    void blank() {
        context = browser.get().newContext();
        page = context.newPage();
    }

    @AfterEach
    void quiet() {
        context.close();
        assertThat(complaints).isEmpty();
        assertThat(requests).allSatisfy(request -> assertThat(request).startsWith("file:"));
    }

    static Path file(Language language) {
        return folder.resolve("guide-" + language.code() + ".html");
    }

    void open(Language language, NewContextOptions options) {
        context.close();
        context = browser.get().newContext(options.setViewportSize(PHONE_WIDTH, PHONE_HEIGHT));
        page = context.newPage();
        page.setDefaultTimeout(10_000);
        page.onConsoleMessage(message -> complaints.add(message.text()));
        page.onPageError(complaints::add);
        page.onRequest(request -> requests.add(request.url()));
        page.clock().install();
        page.navigate(file(language).toUri().toString());
        page.clock().pauseAt(System.currentTimeMillis() + 60_000);
    }

    void open(Language language) {
        open(language, new NewContextOptions());
    }

    String shown(String selector) {
        return page.locator("section:not([hidden]) " + selector).first().innerText();
    }

    void press() {
        page.locator("#go").click();
    }

    List<String> violations() {
        // The checker waits on timers of its own, which do not come while time stands still.
        page.clock().resume();
        return new AxeBuilder(page)
                .analyze().getViolations().stream().map(Object::toString).toList();
    }

    /** Leaps, and then lets the last pictures be drawn. */
    void pass(int milliseconds) {
        int drawn = 40;
        page.clock().fastForward(milliseconds - drawn);
        page.clock().runFor(drawn);
    }

    String leg() {
        // The outline of everything that moves.
        return (String) page.evaluate(
                "[...document.querySelectorAll('#exercise-1 .start path')].map(p => p.getAttribute('d')).join()");
    }
}
