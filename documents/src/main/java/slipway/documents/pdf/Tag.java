package slipway.documents.pdf;

import org.w3c.dom.Element;

/** One element of a {@link PrintDocument}: add to it what stands inside, in reading order. */
public final class Tag {
    private final Element element;

    Tag(Element element) {
        this.element = element;
    }

    /** Adds an element at the end and returns it. */
    public Tag add(String name) {
        Element child = element.getOwnerDocument().createElementNS(PrintDocument.XHTML, name);
        element.appendChild(child);
        return new Tag(child);
    }

    /** Adds an element with a style class at the end and returns it. */
    public Tag add(String name, String cssClass) {
        return add(name).attribute("class", cssClass);
    }

    /** Adds an element that holds only text; returns this element, so that such lines can follow each other. */
    public Tag line(String name, String cssClass, String text) {
        add(name, cssClass).text(text);
        return this;
    }

    /** Adds text at the end; returns this element. Signs that cannot be printed are dropped. */
    public Tag text(String text) {
        String printable = printable(text);
        // The engine's right-to-left module fails on an empty text.
        if (!printable.isEmpty()) {
            element.appendChild(element.getOwnerDocument().createTextNode(printable));
        }
        return this;
    }

    /** Sets an attribute; returns this element. */
    public Tag attribute(String name, String value) {
        element.setAttribute(name, printable(value));
        return this;
    }

    /**
     * Adds a picture as large as fits into a box; returns this element.
     *
     * @param alternative what the picture shows, in words; empty is refused, since a screen reader would fall silent
     */
    public Tag picture(Svg svg, String alternative, double maxWidthMm, double maxHeightMm) {
        if (alternative.isBlank()) {
            throw new IllegalArgumentException("a picture needs a description in words, was blank");
        }
        double scale = Math.min(maxWidthMm / svg.width(), maxHeightMm / svg.height());
        Element drawn = (Element) element.getOwnerDocument().importNode(svg.root(), true);
        drawn.setAttribute("alt", printable(alternative));
        drawn.setAttribute(
                "style",
                "margin:0 auto;width:%smm;height:%smm".formatted(mm(svg.width() * scale), mm(svg.height() * scale)));
        element.appendChild(drawn);
        return this;
    }

    /** All text inside. */
    String content() {
        return element.getTextContent();
    }

    private static String mm(double length) {
        return Double.toString(Math.round(length * 100) / 100.0);
    }

    /**
     * The text without control characters, halves of surrogate pairs and marks that override the direction of
     * writing: the first two break a PDF, the last could turn a dose around.
     */
    static String printable(String text) {
        return text.codePoints()
                .filter(c -> c == '\n' || c == '\t' || !(Character.isISOControl(c) || isSurrogate(c) || overrides(c)))
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static boolean isSurrogate(int codePoint) {
        return Character.getType(codePoint) == Character.SURROGATE;
    }

    private static boolean overrides(int codePoint) {
        return (codePoint >= 0x202A && codePoint <= 0x202E) || (codePoint >= 0x2066 && codePoint <= 0x2069);
    }
}
