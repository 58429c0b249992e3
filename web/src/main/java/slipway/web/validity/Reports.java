package slipway.web.validity;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/** The reports that ship with the program: text with tables, made into HTML once. */
final class Reports {
    private static final List<TablesExtension> TABLES = List.of((TablesExtension) TablesExtension.create());
    private static final Map<String, Optional<Report>> READ = new ConcurrentHashMap<>();

    /** Names of reports in the order of the page; one that is not there yet is left out. */
    private static final List<String> NAMES =
            List.of("validation", "validation-locate", "validation-respond", "validation-study", "validation-measures");

    private Reports() {}

    /**
     * A report.
     *
     * @param name in addresses
     * @param html its text, made from the project's own files
     */
    record Report(String name, String title, String html) {}

    static List<Report> list() {
        return NAMES.stream().flatMap(name -> find(name).stream()).toList();
    }

    static Optional<Report> find(String name) {
        return NAMES.contains(name) ? READ.computeIfAbsent(name, Reports::read) : Optional.empty();
    }

    /** A picture of the reports as SVG. */
    static Optional<byte[]> picture(String file) {
        return file.matches("[a-z-]{1,40}\\.svg") ? bytes("images/" + file) : Optional.empty();
    }

    private static Optional<Report> read(String name) {
        return bytes(name + ".md").map(bytes -> {
            Node page = Parser.builder().extensions(TABLES).build().parse(new String(bytes, StandardCharsets.UTF_8));
            var reader = new Reader();
            page.accept(reader);
            String html = HtmlRenderer.builder()
                    .extensions(TABLES)
                    .escapeHtml(true)
                    .build()
                    .render(page)
                    .replace("<table>", "<div class=\"scroll\" tabindex=\"0\"><table>")
                    .replace("</table>", "</table></div>");
            return new Report(name, reader.title, html);
        });
    }

    private static Optional<byte[]> bytes(String file) {
        try (InputStream stream = Reports.class.getResourceAsStream("reports/" + file)) {
            return stream == null ? Optional.empty() : Optional.of(stream.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file, e);
        }
    }

    /** Takes the title, turns links between reports into addresses of pages, and drops those to other files. */
    private static final class Reader extends AbstractVisitor {
        private String title = "";
        private int level;

        @Override
        public void visit(Heading heading) {
            if (heading.getLevel() == 1 && heading.getFirstChild() instanceof Text text) {
                title = text.getLiteral();
            }
            // Generated parts start deeper than the text around them; a page must not skip a level.
            level = Math.min(heading.getLevel(), level + 1);
            heading.setLevel(level);
            visitChildren(heading);
        }

        /** The marks around the generated part are for its writer. */
        @Override
        public void visit(HtmlBlock block) {
            block.unlink();
        }

        @Override
        public void visit(Image image) {
            image.setDestination(image.getDestination().replace("images/", "/validity/images/"));
        }

        @Override
        public void visit(Link link) {
            String to = link.getDestination().toLowerCase(Locale.ROOT);
            if (to.matches("validation[a-z-]*\\.md")) {
                link.setDestination("/validity/" + to.replace(".md", ""));
            } else if (!to.startsWith("#")) {
                Node child = link.getFirstChild();
                while (child != null) {
                    Node next = child.getNext();
                    link.insertBefore(child);
                    child = next;
                }
                link.unlink();
            }
        }
    }
}
