package slipway.documents.pdf;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;
import org.jspecify.annotations.Nullable;

/** The text of a PDF as a screen reader walks it: along the structure tree, not along the page. */
public final class PdfText {
    private final Map<PDPage, Map<Integer, String>> textByMark = new HashMap<>();
    private final StringBuilder read = new StringBuilder();

    private PdfText() {}

    /** All text and the descriptions of pictures in reading order, single spaces between. */
    public static String inReadingOrder(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            var text = new PdfText();
            for (PDPage page : document.getPages()) {
                var extractor = new PDFMarkedContentExtractor();
                extractor.processPage(page);
                Map<Integer, String> marks = new HashMap<>();
                extractor.getMarkedContents().forEach(content -> collect(page, content, marks));
                text.textByMark.put(page, marks);
            }
            text.walk(document.getDocumentCatalog().getStructureTreeRoot(), null);
            return text.read.toString().replaceAll("\\s+", " ").strip();
        }
    }

    private static void collect(PDPage page, PDMarkedContent content, Map<Integer, String> marks) {
        var own = new StringBuilder();
        for (Object item : content.getContents()) {
            if (item instanceof TextPosition position) {
                own.append(position.getUnicode());
            } else if (item instanceof PDMarkedContent inner) {
                collect(page, inner, marks);
            }
        }
        marks.merge(mark(page, content), own.toString(), String::concat);
    }

    /** The library takes the name of the property list for the tag; the mark stands in that list. */
    private static int mark(PDPage page, PDMarkedContent content) {
        PDPropertyList properties = page.getResources().getProperties(COSName.getPDFName(content.getTag()));
        return properties == null
                ? content.getMCID()
                : properties.getCOSObject().getInt(COSName.MCID);
    }

    private void walk(PDStructureNode node, @Nullable PDPage inherited) {
        PDPage page = inherited;
        if (node instanceof PDStructureElement element) {
            page = element.getPage() == null ? inherited : element.getPage();
            if (element.getAlternateDescription() != null) {
                read.append(' ').append(element.getAlternateDescription());
            }
        }
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureNode inner) {
                walk(inner, page);
            } else if (kid instanceof PDMarkedContentReference reference) {
                append(reference.getPage() == null ? page : reference.getPage(), reference.getMCID());
            } else if (kid instanceof Integer mark) {
                append(page, mark);
            }
        }
    }

    private void append(@Nullable PDPage page, int mark) {
        read.append(' ').append(textByMark.getOrDefault(page, Map.of()).getOrDefault(mark, ""));
    }
}
