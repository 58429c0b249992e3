package slipway.documents.pdf;

import com.openhtmltopdf.bidi.support.ICUBidiReorderer;
import com.openhtmltopdf.bidi.support.ICUBidiSplitter;
import com.openhtmltopdf.pdfboxout.PagePosition;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.PageBox;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import com.openhtmltopdf.util.XRLogger;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Prints pages as tagged PDF that follows PDF/UA-1, with the bundled typefaces embedded. Safe for use by several
 * threads; keep one, since reading the typefaces costs some tenths of a second.
 */
public final class PdfEngine {
    private static final Pattern ANY_ID = Pattern.compile("^");

    static {
        // The engine's own log would repeat a person's words on the console. Its messages are collected instead.
        XRLog.setLoggerImpl(new Silence());
    }

    private final Typefaces typefaces = new Typefaces();

    /**
     * Prints a page.
     *
     * @param created the moment that the file says it was made; given, so that equal pages give equal bytes
     * @throws IllegalArgumentException if the page asks for anything outside itself, or if its style sheet is not
     *     understood; all such faults are named
     */
    public Printed print(PrintDocument page, Instant created) {
        var outside = new Outside();
        var faults = new ArrayList<String>();
        var builder = new PdfRendererBuilder();
        builder.usePdfUaAccessibility(true);
        builder.usePdfVersion(1.7f);
        builder.withProducer("Slipway");
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.useUnicodeBidiSplitter(new ICUBidiSplitter.ICUBidiSplitterFactory());
        builder.useUnicodeBidiReorderer(new ICUBidiReorderer());
        builder.useReplacementText("\uFFFD");
        builder.withDiagnosticConsumer(message -> collect(message, faults));
        typefaces.register(builder);
        outside.close(builder);
        builder.withW3cDocument(page.tree(), "slipway:page");
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer();
                PDDocument document = renderer.createPDFKeepOpen()) {
            outside.check();
            check(faults);
            byte[] pdf = Finish.finish(document, page.title(), created);
            return new Printed(pdf, document.getNumberOfPages(), places(renderer), typefaces.missing(page.bodyText()));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write the PDF \"" + page.title() + "\"", e);
        }
    }

    private static void collect(Diagnostic message, List<String> faults) {
        if (message.getLevel().intValue() >= Level.WARNING.intValue()) {
            faults.add(message.getFormattedMessage());
        }
    }

    private static void check(List<String> faults) {
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException(
                    "a printed page must be understood whole, but: " + String.join("; ", faults));
        }
    }

    private static Map<String, Printed.Place> places(PdfBoxRenderer renderer) {
        List<PageBox> pages = renderer.getRootBox().getLayer().getPages();
        var places = new HashMap<String, Printed.Place>();
        for (PagePosition<Box> position : renderer.findPagePositionsByID(ANY_ID)) {
            int top = position.getElement().getAbsY();
            int bottom = top + Math.max(1, position.getElement().getHeight()) - 1;
            places.put(position.getId(), new Printed.Place(pageAt(pages, top), pageAt(pages, bottom)));
        }
        return places;
    }

    private static int pageAt(List<PageBox> pages, int y) {
        int page = 1;
        while (page < pages.size() && y >= pages.get(page - 1).getBottom()) {
            page++;
        }
        return page;
    }

    private static final class Silence implements XRLogger {
        @Override
        public void log(String where, Level level, String message) {}

        @Override
        public void log(String where, Level level, String message, Throwable cause) {}

        @Override
        public void setLevel(String logger, Level level) {}

        @Override
        public boolean isLogLevelEnabled(Diagnostic diagnostic) {
            return false;
        }
    }
}
