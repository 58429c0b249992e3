package slipway.web.shell;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;

/**
 * A QR code as the path of an SVG, one unit a module.
 *
 * @param size modules along each side
 */
public record QrCode(int size, String path) {
    /** The code of a text. */
    public static QrCode of(String text) {
        try {
            BitMatrix matrix = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0);
            var path = new StringBuilder();
            for (int y = 0; y < matrix.getHeight(); y++) {
                for (int x = 0; x < matrix.getWidth(); x++) {
                    if (matrix.get(x, y)) {
                        path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
                    }
                }
            }
            return new QrCode(matrix.getWidth(), path.toString());
        } catch (WriterException e) {
            throw new IllegalStateException("a QR code of " + text.length() + " characters", e);
        }
    }
}
