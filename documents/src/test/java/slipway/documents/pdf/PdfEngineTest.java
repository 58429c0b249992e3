package slipway.documents.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipway.exercises.exercise.Language;

class PdfEngineTest {
    private static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");
    private static final String CSS = "body { font-family: 'Atkinson Hyperlegible Next', 'DejaVu Sans'; }";
    private static final PdfEngine ENGINE = new PdfEngine();

    private static PrintDocument page(String css) {
        return PrintDocument.create(Language.EN, "A test page", css);
    }

    @Test
    void equalPagesGiveEqualBytes() {
        PrintDocument first = page(CSS);
        first.body().line("h1", "", "Same");
        PrintDocument second = page(CSS);
        second.body().line("h1", "", "Same");
        assertThat(ENGINE.print(first, NOON).pdf())
                .isEqualTo(new PdfEngine().print(second, NOON).pdf());
    }

    @Test
    void theFileIsDatedAsGiven() throws Exception {
        PrintDocument page = page(CSS);
        page.body().line("h1", "", "Dated");
        try (PDDocument document = Loader.loadPDF(ENGINE.print(page, NOON).pdf())) {
            assertThat(document.getDocumentInformation().getCreationDate().toInstant())
                    .isEqualTo(NOON);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "http://clinic.example/pixel.png",
                "https://clinic.example/pixel.png",
                "file:///etc/hostname",
                "pixel.png",
                "data:image/png;base64,iVBORw0KGgo="
            })
    void aPictureFromOutsideIsRefused(String address) {
        PrintDocument page = page(CSS);
        page.body().add("img").attribute("src", address).attribute("alt", "a pixel");
        assertThatThrownBy(() -> ENGINE.print(page, NOON))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(address);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "@import url('http://clinic.example/a.css');",
                "body { background-image: url(http://clinic.example/a.png); }",
                "@font-face { font-family: x; src: url(http://clinic.example/a.ttf); } body { font-family: x; }"
            })
    void aStyleFromOutsideIsRefused(String css) {
        PrintDocument page = page(css);
        page.body().line("p", "", "text");
        assertThatThrownBy(() -> ENGINE.print(page, NOON))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("clinic.example");
    }

    @Test
    void aStyleThatIsNotUnderstoodIsAMistake() {
        PrintDocument page = page(CSS + " body { display: flex; }");
        page.body().line("p", "", "text");
        assertThatThrownBy(() -> ENGINE.print(page, NOON))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("flex");
    }

    @Test
    void aLinkCarriesItsAddressForScreenReaders() throws Exception {
        PrintDocument page = page(CSS);
        page.body()
                .add("p")
                .add("a")
                .attribute("href", "https://clinic.example/guide")
                .attribute("title", "The guide")
                .text("the guide");
        byte[] pdf = ENGINE.print(page, NOON).pdf();
        assertThat(PdfUa.violations(pdf)).isEmpty();
    }

    @Test
    void markupInAWordStaysAWord() throws Exception {
        String nasty = "<script>&amp;</p>\u202Eab\u0000\uD800";
        PrintDocument page = page(CSS);
        page.body().line("p", "", nasty);
        assertThat(PdfText.inReadingOrder(ENGINE.print(page, NOON).pdf())).contains("<script>&amp;</p>ab");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\n", "\u0000", "\u00a0", "\u202e", "\u0627", "\u200f"})
    void emptyAndInvisibleTextsArePrinted(String text) {
        PrintDocument page = page(CSS);
        page.body().line("p", "", text).line("p", "", "end");
        assertThat(ENGINE.print(page, NOON).pageCount()).isEqualTo(1);
    }

    @Test
    void namesTheSignsThatCannotBeDrawn() {
        PrintDocument page = page(CSS);
        page.body().line("p", "", "Zoë Ñ Ωμέγα Ж רות مريم → ☐ 李小李 ab");
        assertThat(ENGINE.print(page, NOON).missingSigns()).isEqualTo("李小");
    }

    @Test
    void saysOnWhichPageAPartStands() {
        PrintDocument page = page(CSS);
        page.body().add("div").attribute("id", "one").line("p", "", "first");
        Tag two = page.body().add("div").attribute("id", "two").attribute("style", "page-break-before: always");
        for (int i = 0; i < 80; i++) {
            two.line("p", "", "line " + i);
        }
        Printed printed = ENGINE.print(page, NOON);
        assertThat(printed.getPlace("one")).isEqualTo(new Printed.Place(1, 1));
        assertThat(printed.getPlace("two")).isEqualTo(new Printed.Place(2, printed.pageCount()));
        assertThat(printed.places().values().stream().filter(Printed.Place::split))
                .hasSize(1);
        assertThat(printed.pageCount()).isGreaterThan(2);
    }
}
