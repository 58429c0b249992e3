package slipway.app.nerve;

import java.util.Locale;
import slipway.care.bench.PostureReading;
import slipway.care.bench.PostureReading.AtSite;
import slipway.care.bench.Spread;

/** Two postures side by side as text, both compared with the same posture. */
final class PosturesBeside {
    private PosturesBeside() {}

    static String text(PostureReading one, PostureReading other) {
        var out = new StringBuilder();
        out.append("A        ").append(one.posture()).append('\n');
        out.append("B        ").append(other.posture()).append('\n');
        out.append("from     ").append(one.from()).append('\n');
        out.append("tract    ").append(one.tract().key()).append("\n\n");
        out.append(row("site", "A strain, %", "B strain, %", "A glide, mm", "B glide, mm", "A load, %", "B load, %"));
        for (int i = 0; i < one.sites().size(); i++) {
            AtSite a = one.sites().get(i);
            AtSite b = other.sites().get(i);
            out.append(row(
                    a.site(),
                    spread(a.strainPct()),
                    spread(b.strainPct()),
                    way(a.glideMm()),
                    way(b.glideMm()),
                    spread(a.loadPct()),
                    spread(b.loadPct())));
        }
        return out.append("\nMedian and 90 % of the draws; glide distal positive, ? = which way is not known.\n")
                .toString();
    }

    private static String row(Object... cells) {
        return String.format(Locale.ROOT, "%-30s %17s %17s   %20s %20s   %17s %17s%n", cells)
                .replaceAll(" +(?=\\R)", "");
    }

    private static String way(Spread glide) {
        return spread(glide) + (glide.signUnsure() ? " ?" : "");
    }

    private static String spread(Spread spread) {
        // Adding zero takes the minus from a rounded zero.
        return String.format(
                Locale.ROOT,
                "%.1f (%.1f, %.1f)",
                Math.rint(10 * spread.median()) / 10 + 0.0,
                Math.rint(10 * spread.low()) / 10 + 0.0,
                Math.rint(10 * spread.high()) / 10 + 0.0);
    }
}
