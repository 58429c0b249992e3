package slipway.documents.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import slipway.exercises.exercise.Language;
import slipway.reasoning.dose.DosedExercise;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class GuideOfVisitTest {
    private static final int MOST_BYTES = 300_000;
    private static final Pattern CODE = Pattern.compile("(?s)<(script|style)([^>]*)>(.*?)</\\1>");

    /** The markup without the code in it, which is no XML. */
    private static Document markup(String page) throws Exception {
        String plain = CODE.matcher(page).replaceAll("").replace("<!DOCTYPE html>", "");
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(plain)));
    }

    private static List<Element> elements(Document document) {
        var all = document.getElementsByTagName("*");
        var elements = new ArrayList<Element>();
        for (int i = 0; i < all.getLength(); i++) {
            elements.add((Element) all.item(i));
        }
        return elements;
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void isWellFormedAndSmallAndSaysItsLanguage(Language language) throws Exception {
        String page = SampleGuides.page(language);
        Element root = markup(page).getDocumentElement();
        assertThat(root.getNodeName()).isEqualTo("html");
        assertThat(root.getAttribute("lang")).isEqualTo(language.code());
        assertThat(page.getBytes(StandardCharsets.UTF_8).length).isLessThan(MOST_BYTES);
        List<String> ids = elements(markup(page)).stream()
                .map(element -> element.getAttribute("id"))
                .filter(id -> !id.isEmpty())
                .toList();
        assertThat(ids).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void refersToNothingOutsideItself(Language language) throws Exception {
        String page = SampleGuides.page(language);
        assertThat(page.replace("xmlns=\"http://www.w3.org/2000/svg\"", ""))
                .doesNotContain("http:", "https:", "url(", "@import", "fetch(", "XMLHttpRequest", "sendBeacon");
        for (Element element : elements(markup(page))) {
            assertThat(element.hasAttribute("src")).isFalse();
            // A style that stands at an element would be refused by the page's own policy.
            assertThat(element.hasAttribute("style")).isFalse();
            if (element.hasAttribute("href")) {
                assertThat(element.getAttribute("href")).matches("#[a-z0-9-]+|tel:\\+?[0-9]+");
            }
        }
    }

    @Test
    void linksLeadToScreensThatAreThere() throws Exception {
        var all = elements(markup(SampleGuides.page(Language.EN)));
        var ids = all.stream().map(element -> element.getAttribute("id")).toList();
        assertThat(all.stream().map(element -> element.getAttribute("href")).filter(href -> href.startsWith("#")))
                .isNotEmpty()
                .allSatisfy(href -> assertThat(ids).contains(href.substring(1)));
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void runsOnlyTheCodeThatItsPolicyNames(Language language) throws Exception {
        String page = SampleGuides.page(language);
        var policy = new ArrayList<String>();
        for (Element element : elements(markup(page))) {
            if (element.getAttribute("http-equiv").equals("Content-Security-Policy")) {
                policy.add(element.getAttribute("content"));
            }
        }
        assertThat(policy)
                .singleElement()
                .asString()
                .startsWith("default-src 'none';")
                .doesNotContain("unsafe");
        Matcher code = CODE.matcher(page);
        int checked = 0;
        while (code.find()) {
            if (!code.group(2).contains("application/json")) {
                byte[] digest = MessageDigest.getInstance("SHA-256")
                        .digest(code.group(3).getBytes(StandardCharsets.UTF_8));
                assertThat(policy.get(0))
                        .contains(code.group(1) + "-src 'sha256-"
                                + Base64.getEncoder().encodeToString(digest) + "'");
                checked++;
            }
        }
        assertThat(checked).isEqualTo(2);
    }

    @Test
    void pacesThePlanAndOnTheEasierDayNeverMore() {
        List<DosedExercise> given = SampleGuides.visit().given();
        JsonNode exercises = data(SampleGuides.page(Language.EN)).path("exercises");
        assertThat(given).isNotEmpty();
        assertThat(SampleGuides.visit().companions()).isNotEmpty();
        assertThat(exercises.size())
                .isEqualTo(given.size() + SampleGuides.visit().companions().size());
        for (int i = 0; i < given.size(); i++) {
            var dose = given.get(i).dose();
            JsonNode usual = exercises.path(i).path("usual");
            JsonNode easier = exercises.path(i).path("easier");
            assertThat(usual.path("count").asInt()).isEqualTo(dose.repetitions());
            assertThat(usual.path("rounds").asInt()).isEqualTo(dose.sets());
            assertThat(usual.path("way").asDouble()).isEqualTo(Math.rint(dose.secondsPerDirection()));
            assertThat(usual.path("reach").asDouble()).isEqualTo(1);
            assertThat(easier.path("count").asInt()).isLessThanOrEqualTo(dose.repetitions());
            assertThat(easier.path("rounds").asInt()).isLessThanOrEqualTo(dose.sets());
            assertThat(easier.path("reach").asDouble()).isBetween(0.1, 0.99);
            assertThat(easier.path("way").asDouble()).isGreaterThan(dose.secondsPerDirection());
            assertThat(exercises.path(i).path("tracks").size()).isPositive();
        }
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void saysTheSideTheStopRulesAndTheEmergencyNumber(Language language) throws Exception {
        String text = markup(SampleGuides.page(language)).getDocumentElement().getTextContent();
        var episode = SampleGuides.visit().file().episode();
        assertThat(text).contains(episode.clinic().emergencyNumber());
        assertThat(text)
                .contains(
                        language == Language.EN
                                ? List.of("right leg", "not a diagnosis", "usual pain gets clearly stronger")
                                : List.of("pierna derecha", "no es un diagnóstico", "dolor de siempre"));
    }

    @Test
    void thereIsNoGuideWithoutAPlan() {
        var stopped = SampleGuides.planned(Path.of("..", "examples", "red-flag-saddle-numbness.yaml"));
        assertThatThrownBy(() -> GuideOfVisit.html(stopped, Language.EN, LocalDate.of(2026, 1, 5), "1"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static JsonNode data(String page) {
        Matcher code = CODE.matcher(page);
        while (code.find()) {
            if (code.group(2).contains("application/json")) {
                return JsonMapper.shared().readTree(code.group(3));
            }
        }
        throw new AssertionError("the page has no data");
    }
}
