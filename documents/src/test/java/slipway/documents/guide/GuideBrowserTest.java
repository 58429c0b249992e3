package slipway.documents.guide;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.options.ReducedMotion;
import java.util.List;
import org.junit.jupiter.api.Test;
import slipway.exercises.exercise.Language;

/** How the guide paces, counts, pauses and speaks. */
class GuideBrowserTest extends GuideInABrowser {
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
}
