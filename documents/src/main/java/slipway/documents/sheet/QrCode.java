package slipway.documents.sheet;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import slipway.documents.pdf.Svg;

/** An address as a code that a phone reads, drawn as one path so that it prints sharp. */
final class QrCode {
    /** Light border that the standard asks for (ISO/IEC 18004), in modules. */
    private static final int QUIET_ZONE = 4;

    private QrCode() {}

    static Svg of(String address) {
        BitMatrix bits = matrix(address);
        var path = new StringBuilder();
        for (int y = 0; y < bits.getHeight(); y++) {
            for (int x = 0; x < bits.getWidth(); x++) {
                int from = x;
                while (x < bits.getWidth() && bits.get(x, y)) {
                    x++;
                }
                if (x > from) {
                    path.append("M%d %dh%dv1h-%dz".formatted(from, y, x - from, x - from));
                }
            }
        }
        return Svg.parse("<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 %d %d'><path d='%s' fill='#000'/></svg>"
                .formatted(bits.getWidth(), bits.getHeight(), path));
    }

    private static BitMatrix matrix(String address) {
        var hints = Map.of(
                EncodeHintType.CHARACTER_SET, StandardCharsets.UTF_8,
                EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M,
                EncodeHintType.MARGIN, QUIET_ZONE);
        try {
            return new QRCodeWriter().encode(address, BarcodeFormat.QR_CODE, 0, 0, hints);
        } catch (WriterException e) {
            throw new IllegalArgumentException(
                    "guide address cannot be drawn as a code, length " + address.length(), e);
        }
    }
}
