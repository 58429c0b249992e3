package slipway.documents.guide;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import slipway.documents.sheet.HomeSheet;
import slipway.documents.words.Words;

/**
 * The page around the screens. Without script it is the whole sheet with still pictures, one below the other; the
 * script turns the same elements into one screen at a time and moves the figures.
 */
final class GuidePage {
    private final HomeSheet sheet;
    private final List<GuideExercise> exercises;
    private final Words words;
    private final Html html = new Html();

    GuidePage(HomeSheet sheet, List<GuideExercise> exercises) {
        this.sheet = sheet;
        this.exercises = List.copyOf(exercises);
        this.words = Words.beside(GuidePage.class, sheet.language());
    }

    String html() {
        String style = resource("guide.css")
                + DarkFigures.all(exercises.stream().map(GuideExercise::dark).toList())
                        .style();
        String script = resource("guide.js");
        html.open("html", "lang", sheet.language().code());
        head(style, script);
        html.open("body");
        var texts = new GuideTexts(words, Words.beside(HomeSheet.class, sheet.language()));
        new HomeScreen(sheet, exercises, texts).addTo(html);
        html.open("script", "type", "application/json", "id", "data")
                .written(GuideData.json(exercises, texts))
                .close();
        // The last element, so that the page is there when it runs.
        html.open("script").written(script).close();
        html.close().close();
        return html.page();
    }

    private void head(String style, String script) {
        html.open("head");
        html.open("meta", "charset", "utf-8");
        html.open("meta", "http-equiv", "Content-Security-Policy", "content", policy(style, script));
        html.open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        html.open("meta", "name", "robots", "content", "noindex");
        html.open("meta", "name", "color-scheme", "content", "light dark");
        html.line("title", words.get("title"));
        html.open("style").written(style).close();
        html.close();
    }

    /** Nothing may be fetched, sent or run but this one style and this one script. */
    private static String policy(String style, String script) {
        return "default-src 'none'; style-src '%s'; script-src '%s'; base-uri 'none'; form-action 'none'"
                .formatted(hash(style), hash(script));
    }

    private static String hash(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static String resource(String name) {
        try (InputStream stream = GuidePage.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException("the program was packaged without " + name);
            }
            // A page read by a browser has its line ends made one; the hashes must be of the same.
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled file " + name + " cannot be read", e);
        }
    }
}
