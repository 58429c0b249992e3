package slipway.pictures.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Puts labels that belong to places along a line into rows so that none overlaps another. A label stands centred over its
 * place where the picture allows it and is pushed inwards at the edges.
 */
public final class LabelRows {
    /** Mean width of a character of a plain sans-serif face as a share of its size; generous, so that labels fit. */
    private static final double CHARACTER = 0.56;

    private static final double GAP = 8;

    private LabelRows() {}

    /**
     * A label with its place.
     *
     * @param middle x of the middle of its text
     * @param row 0 nearest to the line, then upwards
     * @param text what it says; shortened with an ellipsis if it is wider than the picture
     */
    public record Placed(double middle, int row, String text) {}

    /** The width that a text needs at most. */
    public static double widthOf(String text, double size) {
        return text.codePointCount(0, text.length()) * CHARACTER * size;
    }

    /**
     * Rows for labels.
     *
     * @param places x of each label's place
     * @param texts what each says
     * @param size size of the type
     * @param left smallest x, {@code right} the largest
     * @return one for each label, in the order given
     */
    public static List<Placed> of(List<Double> places, List<String> texts, double size, double left, double right) {
        if (places.size() != texts.size()) {
            throw new IllegalArgumentException(
                    "each label needs a place, got %d labels and %d places".formatted(texts.size(), places.size()));
        }
        var placed = new Placed[places.size()];
        var ends = new ArrayList<Double>();
        List<Integer> order = IntStream.range(0, places.size())
                .boxed()
                .sorted(Comparator.comparingDouble(places::get))
                .toList();
        for (int i : order) {
            String text = shortened(texts.get(i), size, right - left);
            double half = 0.5 * widthOf(text, size);
            double middle = Math.min(right - half, Math.max(left + half, places.get(i)));
            int row = 0;
            while (row < ends.size() && ends.get(row) + GAP > middle - half) {
                row++;
            }
            if (row == ends.size()) {
                ends.add(0.0);
            }
            ends.set(row, middle + half);
            placed[i] = new Placed(middle, row, text);
        }
        return List.of(placed);
    }

    private static String shortened(String text, double size, double room) {
        int most = (int) Math.floor(room / (CHARACTER * size));
        int length = text.codePointCount(0, text.length());
        if (length <= most) {
            return text;
        }
        return text.substring(0, text.offsetByCodePoints(0, Math.max(0, most - 1))) + "\u2026";
    }

    /** How many rows these labels take. */
    public static int rows(List<Placed> placed) {
        return placed.stream().mapToInt(Placed::row).max().orElse(-1) + 1;
    }
}
