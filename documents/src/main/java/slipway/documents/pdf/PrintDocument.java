package slipway.documents.pdf;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import slipway.exercises.exercise.Language;

/**
 * A page under construction, to be printed once. It is a tree from the start, never text, so that it is well formed
 * and whatever a person is called stays text. Not safe for use by several threads.
 */
public final class PrintDocument {
    static final String XHTML = "http://www.w3.org/1999/xhtml";

    private final Document document;
    private final Tag body;
    private final String title;

    private PrintDocument(Document document, Tag body, String title) {
        this.document = document;
        this.body = body;
        this.title = title;
    }

    /**
     * An empty page.
     *
     * @param title what a reader's window and a screen reader call the document; must not be blank
     * @param css style sheet, CSS 2.1 with page rules
     */
    public static PrintDocument create(Language language, String title, String css) {
        if (title.isBlank()) {
            throw new IllegalArgumentException("title of a printed document must not be blank");
        }
        Document document = emptyDocument();
        Element root = document.createElementNS(XHTML, "html");
        root.setAttribute("lang", language.code());
        document.appendChild(root);
        Tag html = new Tag(root);
        Tag head = html.add("head");
        head.add("title").text(title);
        head.add("meta").attribute("name", "subject").attribute("content", title);
        head.add("style").text(css);
        return new PrintDocument(document, html.add("body"), Tag.printable(title));
    }

    private static Document emptyDocument() {
        try {
            return DocumentBuilderFactory.newDefaultNSInstance()
                    .newDocumentBuilder()
                    .newDocument();
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("the JDK's own XML parser is not available", e);
        }
    }

    /** The body, to be filled. */
    public Tag body() {
        return body;
    }

    String bodyText() {
        return body.content();
    }

    String title() {
        return title;
    }

    Document tree() {
        return document;
    }
}
