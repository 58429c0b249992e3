package slipway.app.exchange;

import java.io.PrintWriter;
import slipway.exchange.fhir.Preview;

/** What a bundle would change, as text. */
final class PreviewText {
    private PreviewText() {}

    static void print(Preview preview, PrintWriter out) {
        for (Preview.Kind kind : Preview.Kind.values()) {
            var items = preview.of(kind);
            if (!items.isEmpty()) {
                out.printf("%s (%d)%n", kind.words(), items.size());
                items.forEach(item -> out.printf("  entry %d %s: %s%n", item.entry(), item.resource(), item.what()));
            }
        }
        if (!preview.changes()) {
            out.println("Nothing would change.");
        }
        out.flush();
    }
}
