package slipway.web.episode.examine;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;

/**
 * An area of the chart of symptoms, placed on one leg.
 *
 * @param path of the symptom in the case
 * @param side {@code right} or {@code left}
 * @param title area and side in words
 * @param points outline, as an SVG polygon has it
 * @param x middle, where its sign stands
 * @param y middle
 * @param state what is recorded; blank for nothing
 */
public record Area(String path, String side, String title, String points, double x, double y, String state) {
    private static final double MIDLINE = 100;
    private static final double BACK_FROM = 240;
    private static final List<Shape> SHAPES = read();

    /** One outline of {@code areas.csv}: the own outer side is at x = 0, the midline of the body at x = 100. */
    private record Shape(boolean front, String area, double[] points) {}

    /** All areas of the symptoms block, both sides, seen from the front and from behind. */
    static List<Area> of(ExamBlock symptoms) {
        Map<String, ExamRow> rows = new TreeMap<>();
        symptoms.rows().forEach(row -> rows.put(row.item(), row));
        var areas = new ArrayList<Area>();
        for (Shape shape : SHAPES) {
            ExamRow row = Objects.requireNonNull(rows.get(shape.area()), shape.area());
            row.cells().forEach(cell -> areas.add(placed(shape, row, cell)));
        }
        return areas;
    }

    /** From the front the right leg stands on the viewer's left, from behind on the right. */
    private static Area placed(Shape shape, ExamRow row, ExamCell cell) {
        boolean mirrored = shape.front() != cell.side().equals("right");
        double from = shape.front() ? 0 : BACK_FROM;
        var points = new StringBuilder();
        double sumX = 0;
        double sumY = 0;
        for (int i = 0; i < shape.points().length; i += 2) {
            double x = from + (mirrored ? 2 * MIDLINE - shape.points()[i] : shape.points()[i]);
            points.append(String.format(Locale.ROOT, "%.0f,%.0f ", x, shape.points()[i + 1]));
            sumX += x;
            sumY += shape.points()[i + 1];
        }
        double corners = shape.points().length / 2.0;
        return new Area(
                cell.path(),
                cell.side(),
                row.label(),
                points.toString().strip(),
                sumX / corners,
                sumY / corners,
                cell.chosen());
    }

    private static List<Shape> read() {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (InputStream stream = Area.class.getResourceAsStream("areas.csv");
                var reader = new InputStreamReader(Objects.requireNonNull(stream), StandardCharsets.UTF_8);
                var lines = format.parse(reader)) {
            return lines.stream()
                    .map(line ->
                            new Shape(line.get("view").equals("front"), line.get("area"), numbers(line.get("points"))))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read areas.csv", e);
        }
    }

    private static double[] numbers(String points) {
        return java.util.Arrays.stream(points.split("[ ,]+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }
}
