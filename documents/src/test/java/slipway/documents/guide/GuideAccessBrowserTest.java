package slipway.documents.guide;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.exercises.exercise.Language;

/** Whether everybody can use the guide: screens, dark, keyboard, no script. */
class GuideAccessBrowserTest extends GuideInABrowser {
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
