package slipway.web.episode.examine;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import slipway.care.record.content.Section;
import slipway.web.Browser;
import slipway.web.Charts;
import slipway.web.TestServer;
import slipway.web.demo.DemoClinic;
import tools.jackson.databind.node.ObjectNode;

/** The examination entered by keys alone. */
class ExamineByKeyboardTest {
    private static final TestServer SERVER = TestServer.shared();
    private static final Browser BROWSER = new Browser();
    private static final int MOST_KEYS = 60;
    private static final Duration A_MINUTE = Duration.ofMinutes(1);

    private int pressed;

    @AfterAll
    static void close() {
        BROWSER.close();
    }

    private static Page signedIn() {
        Page page = BROWSER.get().newPage();
        page.navigate(SERVER.address() + "/sign-in");
        page.fill("[name=login]", "therapist");
        page.fill("[name=password]", Objects.requireNonNull(DemoClinic.SIGN_INS.get("therapist")));
        page.keyboard().press("Enter");
        page.waitForURL(address -> !address.contains("/sign-in"));
        return page;
    }

    private String open(Page page, String name) {
        String id = Charts.begin(SERVER, name, Map.of()).episode().id();
        page.navigate(SERVER.address() + "/episodes/" + id + "/examine");
        page.waitForFunction("() => document.activeElement.id === 'examination.right.strength.hip_flexors'");
        return id;
    }

    private void press(Page page, String... keys) {
        for (String key : keys) {
            page.keyboard().press(key);
            pressed += key.contains("+") && key.length() > 1 ? 2 : 1;
        }
    }

    @Test
    void aNormalExaminationTakesFewKeysAndLessThanAMinute() {
        try (Page page = signedIn()) {
            String id = open(page, "Normal Throughout");
            Instant start = Instant.now();
            for (String block : List.of("strength", "reflexes", "dermatomes", "neural", "upper")) {
                press(page, ".", ".");
                assertThat(page.locator("#block-" + block).isVisible()).isTrue();
            }
            press(page, "Control+Enter");
            page.waitForURL("**/locate");
            assertThat(pressed).isLessThan(MOST_KEYS);
            assertThat(Duration.between(start, Instant.now())).isLessThan(A_MINUTE);
            ObjectNode found = Charts.content(SERVER, id, Section.EXAMINATION);
            for (String side : List.of("right", "left")) {
                var kept = found.path("examination").path(side);
                assertThat(kept.path("strength").size()).isEqualTo(9);
                assertThat(kept.path("strength").path("hip_abductors").asString())
                        .isEqualTo("5");
                assertThat(kept.path("reflexes").path("achilles").asString()).isEqualTo("normal");
                assertThat(kept.path("sensation").propertyNames())
                        .containsExactlyInAnyOrder(
                                "L2_dermatome",
                                "L3_dermatome",
                                "L4_dermatome",
                                "L5_dermatome",
                                "S1_dermatome",
                                "S2_dermatome");
                assertThat(kept.path("provocation").propertyNames())
                        .containsExactlyInAnyOrder(
                                "slr",
                                "crossed_slr",
                                "slump",
                                "femoral_nerve_stretch",
                                "babinski",
                                "clonus",
                                "spasticity");
                assertThat(kept.path("provocation").path("slr").asString()).isEqualTo("negative");
                // What nobody asked or tested stays unrecorded.
                assertThat(kept.has("symptoms")).isFalse();
            }
        }
    }

    @Test
    void theRestOfABlockLeavesWhatWasFoundAndCanBeTakenBack() {
        try (Page page = signedIn()) {
            String id = open(page, "Weak In One");
            press(page, "Enter", "Enter", "4", ".");
            assertThat(page.inputValue("[id='examination.right.strength.ankle_dorsiflexors']"))
                    .isEqualTo("4");
            assertThat(page.inputValue("[id='examination.right.strength.knee_flexors']"))
                    .isEqualTo("5");
            press(page, "Control+z");
            assertThat(page.inputValue("[id='examination.right.strength.knee_flexors']"))
                    .isEmpty();
            press(page, ",", "r", "Control+Enter");
            page.waitForURL("**/locate");
            var right = Charts.content(SERVER, id, Section.EXAMINATION)
                    .path("examination")
                    .path("right");
            assertThat(right.path("strength").toString()).isEqualTo("{\"ankle_dorsiflexors\":\"4\"}");
            assertThat(right.path("reflexes").toString()).isEqualTo("{\"patellar\":\"reduced\"}");
        }
    }

    @Test
    void theChartAndTheListAreOneRecord() {
        try (Page page = signedIn()) {
            open(page, "Calf Tingles");
            var list = page.locator("[id='examination.left.symptoms.posterior_leg']");
            var area = page.locator(".area[data-for='examination.left.symptoms.posterior_leg']");
            area.locator("polygon").click();
            assertThat(list.inputValue()).isEqualTo("pain");
            list.focus();
            press(page, "t");
            assertThat(list.inputValue()).isEqualTo("tingling");
            assertThat(area.locator("text").textContent()).isEqualTo("T");
        }
    }

    @Test
    void theFiveMinutePathHidesOnlyWhatIsNotRecorded() {
        try (Page page = signedIn()) {
            open(page, "Short Of Time");
            var evertors = page.locator("tr[data-item=ankle_evertors]");
            page.locator("[id='examination.left.strength.ankle_evertors']").focus();
            press(page, "3");
            page.check("#five");
            assertThat(evertors.isVisible()).isTrue();
            assertThat(page.locator("tr[data-item=toe_flexors]").isVisible()).isFalse();
            assertThat(page.locator("tr[data-item=ankle_dorsiflexors]").isVisible())
                    .isTrue();
            assertThat(page.locator("#block-symptoms").isVisible()).isFalse();
        }
    }

    @Test
    void axeFindsNothingInAnyWidthAndLight() {
        try (Page page = signedIn()) {
            open(page, "X".repeat(80));
            for (int width : new int[] {390, 1440}) {
                page.setViewportSize(width, 900);
                assertThat(new AxeBuilder(page).analyze().getViolations())
                        .as("axe at %d px", width)
                        .isEmpty();
                assertThat(page.evaluate(
                                "() => document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                        .isEqualTo(0);
            }
        }
    }
}
