package slipway.documents.guide;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Set;

/** Writes the elements of a page in order; text is escaped, every element is closed. */
final class Html {
    private static final Set<String> EMPTY = Set.of("meta", "input", "br");

    private final StringBuilder out = new StringBuilder(200_000);
    private final Deque<String> names = new ArrayDeque<>();

    /** Opens an element; attributes as name, value, name, value. */
    Html open(String name, String... attributes) {
        out.append('<').append(name);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ')
                    .append(attributes[i])
                    .append("=\"")
                    .append(escaped(attributes[i + 1]))
                    .append('"');
        }
        if (EMPTY.contains(name)) {
            out.append("/>");
        } else {
            out.append('>');
            names.push(name);
        }
        return this;
    }

    Html close() {
        out.append("</").append(names.pop()).append('>');
        // Lines that a person can read, and that a difference of two pages can be seen in.
        out.append('\n');
        return this;
    }

    Html text(String text) {
        out.append(escaped(text));
        return this;
    }

    /** An element that holds only text. */
    Html line(String name, String text, String... attributes) {
        return open(name, attributes).text(text).close();
    }

    /** A list of lines; nothing if there are none. */
    Html list(String name, List<String> lines, String... attributes) {
        if (lines.isEmpty()) {
            return this;
        }
        open(name, attributes);
        lines.forEach(line -> line("li", line));
        return close();
    }

    /** What this program itself has written as markup, script or style. */
    Html written(String markup) {
        out.append(markup);
        return this;
    }

    String page() {
        if (!names.isEmpty()) {
            throw new IllegalStateException("not closed: " + names);
        }
        return "<!DOCTYPE html>\n" + out;
    }

    private static String escaped(String text) {
        var safe = new StringBuilder(text.length() + 16);
        text.codePoints().filter(Html::allowed).forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> safe.appendCodePoint(c);
            }
        });
        return safe.toString();
    }

    /** No control characters and halves of surrogate pairs, and no marks that turn the direction of a number around. */
    private static boolean allowed(int c) {
        boolean overrides = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
        return c == '\n' || !(Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE || overrides);
    }
}
