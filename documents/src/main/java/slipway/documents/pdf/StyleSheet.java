package slipway.documents.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** A style sheet with two places to fill: {@code @size@} for the paper and {@code @points@} for the size of type. */
public final class StyleSheet {
    private final String text;

    private StyleSheet(String text) {
        this.text = text;
    }

    /** Reads a style sheet that stands beside a class. */
    public static StyleSheet beside(Class<?> home, String file) {
        try (InputStream stream = home.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalStateException("the program lacks its style sheet " + file);
            }
            return new StyleSheet(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the style sheet " + file, e);
        }
    }

    /** The style for this paper with body text of this size. */
    public String filled(Paper paper, int points) {
        return text.replace("@size@", paper.cssSize()).replace("@points@", Integer.toString(points));
    }
}
