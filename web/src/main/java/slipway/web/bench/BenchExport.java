package slipway.web.bench;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipway.care.bench.PostureReading;
import slipway.care.bench.Spread;
import slipway.documents.words.Words;
import slipway.mechanics.evidence.EvidenceHash;
import slipway.mechanics.parameters.FittedParameters;
import slipway.pictures.look.Palette;
import slipway.pictures.svg.Svg;

/** The answer of the bench as files: one picture, or numbers for a spreadsheet. */
final class BenchExport {
    private static final int WIDTH = 800;
    private static final int STRIP_WIDTH = 760;
    private static final int FIGURE_HEIGHT = 420;
    private static final int SHORT_HASH = 12;

    private static final String VERSION = Optional.ofNullable(
                    BenchExport.class.getPackage().getImplementationVersion())
            .orElse("dev");

    private BenchExport() {}

    /** Which model and data made the numbers. */
    static String basis(Words words) {
        return words.get(
                "basis.line",
                VERSION,
                FittedParameters.sha256().substring(0, SHORT_HASH),
                EvidenceHash.sha256().substring(0, SHORT_HASH));
    }

    /** A sheet with the pictures below each other and what made them. */
    static String picture(BenchQuery query, BenchAnswer answer, Words words) {
        var svg = new StringBuilder();
        int y = 16;
        for (BenchAnswer.Shown shown : answer.shown()) {
            var stance =
                    shown.letter().equals("a") ? query.first() : query.second().orElseThrow();
            y += 24;
            svg.append(line(
                    y,
                    18,
                    (query.compares() ? shown.letter().toUpperCase(Locale.ROOT) + ": " : "")
                            + stance.position().name() + "; " + stance.posture()));
            y += 12;
            svg.append(nested(shown.figure().light(), 20, y, STRIP_WIDTH, FIGURE_HEIGHT));
            y += FIGURE_HEIGHT + 10;
            int height = height(shown.strip().light());
            svg.append(nested(shown.strip().light(), 20, y, STRIP_WIDTH, height));
            y += height + 10;
        }
        for (String text : List.of(words.get("picture.caption", query.tract().key(), answer.draws()), basis(words))) {
            y += 20;
            svg.append(line(y, 13, text));
        }
        int bottom = y + 20;
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + WIDTH + " " + bottom + "\" width=\"" + WIDTH
                + "\" height=\"" + bottom + "\"><rect width=\"" + WIDTH + "\" height=\"" + bottom + "\" fill=\""
                + Palette.PAPER.paper().hex() + "\"/>" + svg + "</svg>";
    }

    private static String line(int y, int size, String text) {
        var svg = new Svg();
        svg.text(
                text,
                "x",
                "20",
                "y",
                Integer.toString(y),
                "font-size",
                Integer.toString(size),
                "font-family",
                "DejaVu Sans, sans-serif",
                "fill",
                Palette.PAPER.ink().hex());
        return svg.content();
    }

    private static int height(String svg) {
        return Integer.parseInt(svg.replaceFirst("(?s)^<svg[^>]* height=\"(\\d+)\".*$", "$1"));
    }

    /** A whole picture as a part of another one. */
    private static String nested(String svg, int x, int y, int width, int height) {
        return svg.replaceFirst(
                "(?s)^(<svg[^>]*?) width=\"\\d+\" height=\"\\d+\"",
                "$1 x=\"" + x + "\" y=\"" + y + "\" width=\"" + width + "\" height=\"" + height + "\"");
    }

    /** One line per posture and place; comment lines say what made them. */
    static String csv(List<Read> readings, Words words) {
        var out = new StringBuilder("# " + basis(words) + "\n# " + words.get("csv.note") + "\n");
        out.append("posture,positionName,angles,countedFrom,tract,site,");
        out.append("strainPct,strainLowPct,strainHighPct,glideMm,glideLowMm,glideHighMm,");
        out.append("loadPct,loadLowPct,loadHighPct,relativeTension\n");
        for (Read read : readings) {
            for (PostureReading.AtSite site : read.reading().sites()) {
                out.append(read.letter()).append(',').append(read.position()).append(',');
                out.append(read.reading().posture()).append(',');
                out.append(read.reading().from()).append(',');
                out.append(read.reading().tract().key()).append(',').append(site.site());
                add(out, site.strainPct());
                add(out, site.glideMm());
                add(out, site.loadPct());
                out.append(',').append(Numbers.plain(site.relativeTension())).append('\n');
            }
        }
        return out.toString();
    }

    /** A reading with the name of its posture. */
    record Read(String letter, String position, PostureReading reading) {}

    private static void add(StringBuilder out, Spread spread) {
        for (double value : new double[] {spread.median(), spread.low(), spread.high()}) {
            out.append(',').append(Numbers.plain(value));
        }
    }
}
