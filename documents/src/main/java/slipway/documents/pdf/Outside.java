package slipway.documents.pdf;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import java.util.Set;
import java.util.TreeSet;

/**
 * Refuses everything that a page asks for from outside itself, whatever the protocol, and remembers what it was: a page
 * about a person must never reach for the network or the disk. One object serves one printing.
 */
final class Outside {
    private static final String[] PROTOCOLS = {"http", "https", "file", "ftp", "jar", "data", "mailto"};

    private final Set<String> refused = new TreeSet<>();

    /** Closes every way out: by address, before and after it is resolved, and by protocol. */
    void close(PdfRendererBuilder builder) {
        builder.useExternalResourceAccessControl(
                (address, type) -> refuse(address), ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useExternalResourceAccessControl(
                (address, type) -> refuse(address), ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
        builder.useProtocolsStreamImplementation(this::stream, PROTOCOLS);
    }

    private boolean refuse(String address) {
        refused.add(address);
        return false;
    }

    private FSStream stream(String address) {
        refuse(address);
        throw new IllegalStateException("a printed page must not fetch " + address);
    }

    /** @throws IllegalArgumentException naming every address that the page asked for */
    void check() {
        if (!refused.isEmpty()) {
            throw new IllegalArgumentException(
                    "a printed page must hold all that it shows, but it asks for " + String.join(", ", refused));
        }
    }
}
