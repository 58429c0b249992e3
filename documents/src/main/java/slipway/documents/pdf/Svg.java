package slipway.documents.pdf;

import java.io.IOException;
import java.io.StringReader;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * A drawing that was read and found harmless: one {@code svg} element with a view box, no scripts, no document type,
 * and nothing fetched from elsewhere.
 */
public final class Svg {
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final Set<String> FORBIDDEN = Set.of("script", "foreignobject", "image", "iframe", "audio", "video");

    private final String markup;
    private final Element root;
    private final double width;
    private final double height;

    private Svg(String markup, Element root, double width, double height) {
        this.markup = markup;
        this.root = root;
        this.width = width;
        this.height = height;
    }

    /**
     * Reads a drawing.
     *
     * @throws IllegalArgumentException if the text is not well-formed SVG, lacks a view box of positive size, or holds
     *     scripts, embedded images or references to anything outside itself
     */
    public static Svg parse(String markup) {
        Element root = rootOf(markup);
        if (!"svg".equals(root.getLocalName()) || !NAMESPACE.equals(root.getNamespaceURI())) {
            throw new IllegalArgumentException("a drawing must be an svg element, was " + root.getNodeName());
        }
        check(root);
        String[] box = root.getAttribute("viewBox").strip().split("[\\s,]+", -1);
        double width = box.length == 4 ? number(box[2]) : Double.NaN;
        double height = box.length == 4 ? number(box[3]) : Double.NaN;
        if (!(width > 0 && height > 0 && width < 1e6 && height < 1e6)) {
            throw new IllegalArgumentException("a drawing needs a viewBox of four numbers with positive width and"
                    + " height, was \"" + root.getAttribute("viewBox") + "\"");
        }
        return new Svg(markup, root, width, height);
    }

    private static Element rootOf(String markup) {
        try {
            return secureBuilder()
                    .parse(new InputSource(new StringReader(markup)))
                    .getDocumentElement();
        } catch (SAXException e) {
            throw new IllegalArgumentException("a drawing must be well-formed SVG: " + e.getMessage(), e);
        } catch (IOException | ParserConfigurationException e) {
            throw new IllegalStateException("the JDK's own XML parser is not available", e);
        }
    }

    private static DocumentBuilder secureBuilder() throws ParserConfigurationException {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        DocumentBuilder builder = factory.newDocumentBuilder();
        // The default handler prints to standard error before it throws.
        builder.setErrorHandler(new DefaultHandler());
        return builder;
    }

    private static void check(Element element) {
        String name = String.valueOf(element.getLocalName()).toLowerCase(Locale.ROOT);
        if (FORBIDDEN.contains(name)) {
            throw new IllegalArgumentException("a drawing must not hold a " + name + " element");
        }
        for (int i = 0; i < element.getAttributes().getLength(); i++) {
            check((Attr) element.getAttributes().item(i));
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                check(inner);
            } else if ("style".equals(name)) {
                checkReferences(child.getTextContent());
            }
        }
    }

    private static void check(Attr attribute) {
        String name = String.valueOf(attribute.getLocalName()).toLowerCase(Locale.ROOT);
        if (name.startsWith("on")) {
            throw new IllegalArgumentException("a drawing must not hold scripts, had attribute " + name);
        }
        if ("href".equals(name) && !attribute.getValue().startsWith("#")) {
            throw new IllegalArgumentException("a drawing must not refer outside itself, had " + attribute.getValue());
        }
        checkReferences(attribute.getValue());
    }

    private static void checkReferences(String value) {
        String squeezed = value.replaceAll("[\\s'\"]", "").toLowerCase(Locale.ROOT);
        if (squeezed.contains("@import") || squeezed.replace("url(#", "").contains("url(")) {
            throw new IllegalArgumentException("a drawing must not refer outside itself, had " + value);
        }
    }

    private static double number(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    /** The text that was read. */
    public String markup() {
        return markup;
    }

    Element root() {
        return root;
    }

    /** What it shows, in its own words: the text of its first {@code desc} element. */
    public Optional<String> description() {
        Node found = root.getElementsByTagNameNS(NAMESPACE, "desc").item(0);
        return Optional.ofNullable(found).map(Node::getTextContent).filter(text -> !text.isBlank());
    }

    /** Width of the view box, in its own units. */
    public double width() {
        return width;
    }

    /** Height of the view box, in its own units. */
    public double height() {
        return height;
    }
}
