package slipway.documents.guide;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.exercises.exercise.Language;

/** The guide as a person has it: opened from a file, on a small phone, without a network; time is the test's. */
@Timeout(60)
class GuideBrowserTest {
    private static final int PHONE_WIDTH = 360;
    private static final int PHONE_HEIGHT = 740;
    private static final int READY_MS = 5_000;
    /** Three seconds each way. */
    private static final int MOVEMENT_MS = 6_000;

    private static Browser browser;

    private final List<String> complaints = new ArrayList<>();
    private final List<String> requests = new ArrayList<>();
    private BrowserContext context;
    private Page page;

    @TempDir
    private static Path folder = Path.of("");

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

    private static Path file(Language language) {
        return folder.resolve("guide-" + language.code() + ".html");
    }

    private void open(Language language, NewContextOptions options) {
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

    private void open(Language language) {
        open(language, new NewContextOptions());
    }

    private String shown(String selector) {
        return page.locator("section:not([hidden]) " + selector).first().innerText();
    }

    private void press() {
        page.locator("#go").click();
    }

    private List<String> violations() {
        // The checker waits on timers of its own, which do not come while time stands still.
        page.clock().resume();
        return new AxeBuilder(page)
                .analyze().getViolations().stream().map(Object::toString).toList();
    }

    /** Leaps, and then lets the last pictures be drawn. */
    private void pass(int milliseconds) {
        int drawn = 40;
        page.clock().fastForward(milliseconds - drawn);
        page.clock().runFor(drawn);
    }

    private String leg() {
        // The outline of everything that moves.
        return (String) page.evaluate(
                "[...document.querySelectorAll('#exercise-1 .start path')].map(p => p.getAttribute('d')).join()");
    }

    @Test
    void keepsThePaceCountsAndPausesAnywhere() {
        open(Language.EN);
        press();
        assertThat(page.locator("#exercise-1 h2")).isFocused();
        assertThat(shown(".moves")).contains("Your right leg moves");
        String start = leg();
        press();
        assertThat(shown(".count")).isEqualTo("Get ready: 5");
        pass(READY_MS + MOVEMENT_MS / 2);
        assertThat(shown(".count")).isEqualTo("1 of 10");
        String far = leg();
        assertThat(far).isNotEqualTo(start);
        pass(MOVEMENT_MS);
        assertThat(shown(".count")).isEqualTo("2 of 10");
        press();
        assertThat(shown(".count")).isEqualTo("Paused. 1 of 10 done.");
        String held = leg();
        pass(10 * MOVEMENT_MS);
        assertThat(leg()).isEqualTo(held);
        // What was interrupted is done again, and nothing is counted twice.
        press();
        pass(READY_MS + 1_000);
        assertThat(shown(".count")).isEqualTo("2 of 10");
        pass(9 * MOVEMENT_MS);
        assertThat(shown(".count")).isEqualTo("All 10 done");
        assertThat(page.locator("#go")).hasText("Next exercise");
        // Not one more than the dose.
        pass(3 * MOVEMENT_MS);
        assertThat(shown(".count")).isEqualTo("All 10 done");
        press();
        assertThat(page.locator("#exercise-2 h2")).isFocused();
    }

    @Test
    void stopRulesAreOneTapAwayAndHoldTheExercise() {
        open(Language.EN);
        press();
        press();
        pass(READY_MS + MOVEMENT_MS + 1_000);
        page.locator(".bar .stop").click();
        assertThat(page.locator("#stop h2")).isFocused();
        assertThat(shown("")).contains("Stop if your usual pain", "numb between the legs", "call 112");
        assertThat(page.locator(".call-now")).hasAttribute("href", "tel:112");
        pass(5 * MOVEMENT_MS);
        press();
        assertThat(page.locator("#exercise-1")).isVisible();
        assertThat(shown(".count")).isEqualTo("Paused. 1 of 10 done.");
    }

    @Test
    void easierDayIsFewerSlowerAndLessFar() {
        open(Language.EN);
        press();
        press();
        pass(READY_MS + MOVEMENT_MS / 2);
        String far = leg();
        press();
        page.locator("section:not([hidden]) [data-option=easier]").click();
        assertThat(shown(".count")).isEqualTo("5 times");
        press();
        pass(READY_MS + MOVEMENT_MS);
        assertThat(shown(".count")).isEqualTo("1 of 5");
        assertThat(leg()).isNotEqualTo(far);
        pass(10 * MOVEMENT_MS);
        assertThat(shown(".count")).isEqualTo("All 5 done");
    }

    @Test
    void lastScreenSaysWhatToDoIfItLasted() {
        open(Language.EN);
        press();
        page.evaluate("location.hash = 'exercise-3'");
        assertThat(page.locator("#exercise-3 h2")).isFocused();
        press();
        pass(READY_MS + 10 * MOVEMENT_MS + 1_000);
        // After the glides comes what goes with them, at its own pace.
        assertThat(page.locator("#go")).hasText("Next exercise");
        press();
        assertThat(page.locator("#exercise-4 h2")).isFocused();
        press();
        pass(10 * 60_000);
        assertThat(page.locator("#go")).hasText("Finish");
        press();
        assertThat(page.locator("#done h2")).isFocused();
        assertThat(shown("")).contains("longer than 10 minutes", "easier day", "call us");
    }

    @Test
    void withoutMotionTheTwoPicturesTakeTurns() {
        open(Language.EN, new NewContextOptions().setReducedMotion(ReducedMotion.REDUCE));
        press();
        assertThat(page.locator("#exercise-1 .start")).isVisible();
        assertThat(page.locator("#exercise-1 .end")).isVisible();
        String start = leg();
        press();
        pass(READY_MS + 1_000);
        assertThat(shown(".count")).isEqualTo("1 of 10");
        assertThat(page.locator("#exercise-1 .end")).isVisible();
        assertThat(page.locator("#exercise-1 .start")).isHidden();
        assertThat(leg()).isEqualTo(start);
        pass(MOVEMENT_MS / 2);
        assertThat(page.locator("#exercise-1 .start")).isVisible();
        assertThat(leg()).isEqualTo(start);
    }

    @Test
    void speaksOnlyWhenAskedAndOnlyWithAVoiceOfTheDevice() {
        open(Language.EN);
        // Headless Chromium has no voices, so there is nothing to offer.
        assertThat(page.locator("[data-option=aloud]")).isHidden();
        page.evaluate("speechSynthesis.getVoices = () => [{localService: false, lang: 'en-US'}];"
                + " speechSynthesis.dispatchEvent(new Event('voiceschanged'))");
        assertThat(page.locator("[data-option=aloud]")).isHidden();
        page.evaluate("window.said = []; window.SpeechSynthesisUtterance = class { constructor(t) { this.text = t; } };"
                + " speechSynthesis.speak = (u) => said.push(u.text);"
                + " speechSynthesis.getVoices = () => [{localService: true, lang: 'en-GB'}];"
                + " speechSynthesis.dispatchEvent(new Event('voiceschanged'))");
        press();
        press();
        pass(READY_MS + 1_000);
        press();
        assertThat((List<?>) page.evaluate("said")).isEmpty();
        page.evaluate("location.hash = 'home'");
        page.locator("[data-option=aloud]").click();
        page.evaluate("location.hash = 'exercise-2'");
        assertThat(page.locator("#exercise-2 h2")).isFocused();
        press();
        pass(READY_MS + 1_000);
        pass(MOVEMENT_MS);
        assertThat(((List<?>) page.evaluate("said")).stream().map(Object::toString))
                .anySatisfy(text -> assertThat(text).contains("Your right leg moves"))
                .contains("1", "2");
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void everyScreenIsAccessibleAndFitsThePhone(Language language) {
        open(language);
        List<String> screens = List.of("home", "exercise-1", "exercise-2", "exercise-3", "stop", "done");
        for (String screen : screens) {
            page.evaluate("id => location.hash = id", screen);
            assertThat(page.locator("#" + screen)).isVisible();
            assertThat(violations()).as(screen).isEmpty();
            assertThat((Integer) page.evaluate("document.documentElement.scrollWidth"))
                    .as(screen)
                    .isLessThanOrEqualTo(PHONE_WIDTH);
            assertThat(
                            (Double)
                                    page.evaluate(
                                            "Math.min(...[...document.querySelectorAll('body *')]"
                                                    + ".filter(e => e.offsetParent).map(e => parseFloat(getComputedStyle(e).fontSize))) + 0.001"))
                    .as("smallest type of " + screen)
                    .isGreaterThanOrEqualTo(16);
        }
    }

    @Test
    void isDarkWhereThePhoneAsksForDarkAndStaysReadable() {
        open(Language.EN, new NewContextOptions().setColorScheme(ColorScheme.DARK));
        for (String screen : List.of("home", "exercise-1", "exercise-2", "stop", "done")) {
            page.evaluate("id => location.hash = id", screen);
            assertThat(page.locator("#" + screen)).isVisible();
            assertThat(violations()).as(screen).isEmpty();
        }
        assertThat(page.evaluate("getComputedStyle(document.documentElement).backgroundColor"))
                .isEqualTo("rgb(27, 34, 38)");
        // No part of a figure keeps a colour of paper that has another one on dark.
        String left = "[...document.querySelectorAll('.stage [fill^=\"#\"]')]"
                + ".filter(e => getComputedStyle(e).fill === 'rgb(250, 248, 243)').length";
        assertThat((Integer) page.evaluate(left)).isZero();
        assertThat((Integer) page.evaluate("document.querySelectorAll('.stage [fill^=\"#\"]').length"))
                .isPositive();
        open(Language.EN);
        assertThat(page.evaluate("getComputedStyle(document.documentElement).backgroundColor"))
                .isEqualTo("rgb(250, 248, 243)");
    }

    @Test
    void playingScreenIsAccessibleToo() {
        open(Language.EN);
        press();
        press();
        pass(READY_MS + 1_000);
        assertThat(violations()).isEmpty();
    }

    @Test
    void everythingIsReachedByKeyboard() {
        open(Language.EN);
        press();
        page.keyboard().press("Tab");
        var reached = new ArrayList<String>();
        for (int i = 0; i < 12; i++) {
            reached.add((String) page.evaluate("document.activeElement.id || document.activeElement.className"));
            page.keyboard().press("Tab");
        }
        assertThat(reached).contains("go", "stop");
        page.locator("#go").focus();
        page.keyboard().press("Space");
        assertThat(page.locator("#go")).hasText("Pause");
        page.keyboard().press("Enter");
        assertThat(page.locator("#go")).hasText("Go on");
    }

    @Test
    void withoutScriptEverythingIsThereToRead() {
        open(Language.EN, new NewContextOptions().setJavaScriptEnabled(false));
        for (String id : List.of("home", "exercise-1", "exercise-2", "exercise-3", "stop", "done")) {
            assertThat(page.locator("#" + id)).isVisible();
        }
        assertThat(page.locator("#exercise-1 .end svg")).isVisible();
        assertThat(page.locator("#go")).isHidden();
    }
}
