package slipway.pictures;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import slipway.pictures.look.Palette;
import slipway.pictures.nerve.StraightenedNerve;
import slipway.pictures.nerve.StraightenedNerveTest;
import slipway.pictures.ruler.LoadRuler;
import slipway.pictures.ruler.LoadRulerTest;

/** Writes a page with the charts below {@code target/}, to be looked at. Not a test. */
final class ChartSheet {
    private ChartSheet() {}

    public static void main(String[] args) throws IOException {
        var html = new StringBuilder("<!doctype html><meta charset=utf-8><body>");
        int n = 0;
        for (Palette palette : new Palette[] {Palette.PAPER, Palette.PAPER.grey(), Palette.DARK}) {
            html.append("<div style='background:").append(palette.paper().hex()).append(";padding:12px'>");
            for (int width : new int[] {720, 360}) {
                html.append(LoadRuler.svg(LoadRulerTest.example(), palette, width, "c" + n++));
                html.append(StraightenedNerve.svg(StraightenedNerveTest.example(), palette, width, "c" + n++));
            }
            html.append("</div>");
        }
        Files.writeString(Path.of(args.length > 0 ? args[0] : "target").resolve("charts.html"), html);
    }
}
