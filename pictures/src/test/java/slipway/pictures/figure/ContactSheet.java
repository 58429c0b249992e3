package slipway.pictures.figure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import slipway.pictures.look.Look;
import slipway.pictures.svg.Words;

/** Writes pages with many figures below {@code target/}, to be looked at. Not a test. */
final class ContactSheet {
    private ContactSheet() {}

    public static void main(String[] args) throws IOException {
        Path out = Path.of(args.length > 0 ? args[0] : "target");
        page(out.resolve("figures.html"), Postures.all(), Look.paper(), "#faf8f3", 0.4);
        page(out.resolve("figures-grey-small.html"), Postures.all(), Look.print(), "#ffffff", 0.17);
        page(out.resolve("figures-dark.html"), Postures.all(), Look.dark(), "#1b2226", 0.3);
    }

    private static void page(Path file, Map<String, FigureScene> scenes, Look look, String ground, double scale)
            throws IOException {
        var html = new StringBuilder("<!doctype html><meta charset=utf-8><body style='margin:8px;background:" + ground
                + ";font:13px sans-serif;color:#888'>");
        int n = 0;
        for (var scene : scenes.entrySet()) {
            String svg = Figure.of(scene.getValue()).svg(look, new Words("f" + n++, scene.getKey(), scene.getKey()));
            html.append("<div style='display:inline-block;margin:4px;vertical-align:bottom'>")
                    .append(scaled(svg, scale))
                    .append("<br>")
                    .append(scene.getKey())
                    .append(' ')
                    .append(Math.round(svg.length() / 100.0) / 10.0)
                    .append(" kB</div>");
        }
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.writeString(file, html);
    }

    private static String scaled(String svg, double scale) {
        var size = java.util.regex.Pattern.compile("width=\"(\\d+)\" height=\"\\d+\"")
                .matcher(svg);
        return size.replaceFirst(match -> "width=\"" + Math.round(Integer.parseInt(match.group(1)) * scale) + "\"");
    }
}
