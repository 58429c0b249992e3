package slipway.documents.pdf;

import com.openhtmltopdf.extend.FSCacheEx;
import com.openhtmltopdf.extend.FSCacheValue;
import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.extend.impl.FSDefaultCacheStore;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.CacheStore;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** The bundled typefaces, read once. */
final class Typefaces {
    /** Family of the main face; it lacks most scripts and signs, so styles name the second family after it. */
    static final String TEXT = "Atkinson Hyperlegible Next";
    /** Other scripts, arrows and boxes to tick. */
    static final String SIGNS = "DejaVu Sans";

    private record Face(String family, int weight, FontStyle style, FSSupplier<InputStream> file) {}

    private final List<Face> faces = List.of(
            face(TEXT, 400, FontStyle.NORMAL, "AtkinsonHyperlegibleNext-Regular.ttf"),
            face(TEXT, 700, FontStyle.NORMAL, "AtkinsonHyperlegibleNext-Bold.ttf"),
            face(TEXT, 400, FontStyle.ITALIC, "AtkinsonHyperlegibleNext-Italic.ttf"),
            face(SIGNS, 400, FontStyle.NORMAL, "DejaVuSans.ttf"));
    private final List<CmapLookup> glyphs = faces.stream()
            .filter(face -> face.weight() == 400 && face.style() == FontStyle.NORMAL)
            .map(Typefaces::glyphs)
            .toList();
    private final FSCacheEx<String, FSCacheValue> metrics = new FSDefaultCacheStore();

    private static Face face(String family, int weight, FontStyle style, String file) {
        try (InputStream stream = Typefaces.class.getResourceAsStream("fonts/" + file)) {
            if (stream == null) {
                throw new IllegalStateException("the program lacks its typeface " + file);
            }
            byte[] bytes = stream.readAllBytes();
            return new Face(family, weight, style, () -> new ByteArrayInputStream(bytes));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the typeface " + file, e);
        }
    }

    /**
     * The signs of a text that no bundled face can draw, each once, in order; they print as U+FFFD. Marks that are never
     * seen do not count.
     */
    String missing(String text) {
        return text.codePoints()
                .filter(sign -> !Character.isWhitespace(sign) && !invisible(sign))
                .filter(sign -> glyphs.stream().noneMatch(face -> face.getGlyphId(sign) > 0))
                .distinct()
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static boolean invisible(int sign) {
        int type = Character.getType(sign);
        return type == Character.FORMAT || type == Character.CONTROL || (sign >= 0xFE00 && sign <= 0xFE0F);
    }

    private static CmapLookup glyphs(Face face) {
        try (var file = new RandomAccessReadBuffer(face.file().supply());
                TrueTypeFont font = new TTFParser().parse(file)) {
            return font.getUnicodeCmapLookup();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the typeface " + face.family(), e);
        }
    }

    void register(PdfRendererBuilder builder) {
        for (Face face : faces) {
            builder.useFont(face.file(), face.family(), face.weight(), face.style(), true);
        }
        builder.useCacheStore(CacheStore.PDF_FONT_METRICS, metrics);
    }
}
