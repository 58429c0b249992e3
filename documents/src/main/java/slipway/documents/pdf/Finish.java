package slipway.documents.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.GregorianCalendar;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionURI;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;

/** The last hand on a laid-out document: what PDF/UA asks of links, and nothing that changes from run to run. */
final class Finish {
    private Finish() {}

    static byte[] finish(PDDocument document, String title, Instant created) throws IOException {
        describeLinks(document);
        date(document, created);
        // The file's identifier comes from the clock unless it is given.
        document.setDocumentId(checksum(title + created));
        var bytes = new ByteArrayOutputStream();
        document.save(bytes);
        return bytes.toByteArray();
    }

    /** Links need their description as contents too; the layout engine gives it to the structure tree only. */
    private static void describeLinks(PDDocument document) throws IOException {
        for (PDPage page : document.getPages()) {
            for (PDAnnotation annotation : page.getAnnotations()) {
                if (annotation instanceof PDAnnotationLink link && link.getContents() == null) {
                    link.setContents(address(link));
                }
            }
        }
    }

    private static String address(PDAnnotationLink link) throws IOException {
        return link.getAction() instanceof PDActionURI uri ? uri.getURI() : "link inside this document";
    }

    private static void date(PDDocument document, Instant created) {
        Instant second = created.truncatedTo(ChronoUnit.SECONDS);
        document.getDocumentInformation().setCreationDate(GregorianCalendar.from(second.atZone(ZoneOffset.UTC)));
    }

    private static long checksum(String text) {
        var sum = new CRC32();
        sum.update(text.getBytes(StandardCharsets.UTF_8));
        return sum.getValue();
    }
}
