package slipway.pictures.svg;

import java.util.Locale;
import slipway.pictures.space.Bounds;

/** Collects the elements of one picture. Not thread-safe; lives as long as one picture is drawn. */
public final class Svg {
    private final StringBuilder body = new StringBuilder(24_000);

    /** An element without content; attributes as name, value, name, value. */
    public Svg element(String name, String... attributes) {
        body.append('<').append(name);
        attributes(attributes);
        body.append("/>");
        return this;
    }

    /** Opens a group whose attributes its members inherit. */
    public Svg open(String... attributes) {
        body.append("<g");
        attributes(attributes);
        body.append('>');
        return this;
    }

    public Svg close() {
        body.append("</g>");
        return this;
    }

    /** A filled or stroked path; further attributes as name, value. */
    public Svg path(String data, String... attributes) {
        body.append("<path");
        attributes(attributes);
        body.append(" d=\"").append(data).append("\"/>");
        return this;
    }

    /** A line of text. */
    public Svg text(String content, String... attributes) {
        body.append("<text");
        attributes(attributes);
        body.append('>').append(escaped(content)).append("</text>");
        return this;
    }

    private void attributes(String... attributes) {
        if (attributes.length % 2 != 0) {
            throw new IllegalArgumentException("attributes come as name and value, got " + attributes.length);
        }
        for (int i = 0; i < attributes.length; i += 2) {
            body.append(' ')
                    .append(attributes[i])
                    .append("=\"")
                    .append(escaped(attributes[i + 1]))
                    .append('"');
        }
    }

    /** What was drawn so far, as a part of another picture. */
    public String content() {
        return body.toString();
    }

    /** The whole document around what was drawn, fractions of stature as bounds. */
    public String document(Words words, Bounds bounds) {
        long left = PathData.units(bounds.left());
        long top = PathData.units(-bounds.top());
        return document(
                words, left, top, PathData.units(bounds.right()) - left, PathData.units(-bounds.bottom()) - top);
    }

    /** The whole document around what was drawn, in units of the picture. */
    public String document(Words words, long left, long top, long width, long height) {
        String titleId = words.idPrefix() + "-title";
        String descriptionId = words.idPrefix() + "-desc";
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"" + left + " " + top + " " + width + " " + height
                + "\" width=\"" + width + "\" height=\"" + height + "\" role=\"img\" aria-labelledby=\"" + titleId + " "
                + descriptionId + "\"><title id=\"" + titleId + "\">" + escaped(words.title()) + "</title><desc id=\""
                + descriptionId + "\">" + escaped(words.description()) + "</desc>" + body + "</svg>";
    }

    /** A number without needless digits. */
    public static String number(double value) {
        double rounded = Math.rint(value * 10) / 10;
        return rounded == Math.rint(rounded)
                ? Long.toString((long) rounded)
                : String.format(Locale.ROOT, "%.1f", rounded);
    }

    static String escaped(String text) {
        var out = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> {
                    // Characters that XML does not allow would make the whole page unreadable.
                    boolean allowed = c == '\t'
                            || c == '\n'
                            || c == '\r'
                            || (c >= 0x20 && c < 0xD800)
                            || (c > 0xDFFF && c < 0xFFFE)
                            || c > 0xFFFF;
                    out.appendCodePoint(allowed ? c : 0xFFFD);
                }
            }
        });
        return out.toString();
    }
}
