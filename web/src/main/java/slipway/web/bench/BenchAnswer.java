package slipway.web.bench;

import java.util.List;

/**
 * What the bench answers, ready to be shown.
 *
 * @param shown posture A, and B if two are compared
 * @param tables numbers at every place, the difference first if two are compared
 * @param left joints that the picture shows and the model leaves out, in words
 * @param draws how many draws the numbers come from
 * @param moving whether these are fewer than all because something moves
 * @param summary the answer in a sentence, for whoever listens
 */
public record BenchAnswer(
        List<Shown> shown, List<Table> tables, List<String> left, int draws, boolean moving, String summary) {
    public BenchAnswer {
        shown = List.copyOf(shown);
        tables = List.copyOf(tables);
        left = List.copyOf(left);
    }

    /** A picture for a light and for a dark page; one of them may be blank when the page says which it needs. */
    public record Drawn(String light, String dark) {}

    /**
     * One posture.
     *
     * @param letter a or b
     * @param figure the body
     * @param strip the straightened nerve
     * @param handles places to take hold of, for the script
     * @param frame the picture's rectangle, for the script
     */
    public record Shown(String letter, Drawn figure, Drawn strip, String handles, String frame) {}

    /** Numbers at every place, counted from a posture. */
    public record Table(String id, String title, boolean first, List<Row> rows) {
        public Table {
            rows = List.copyOf(rows);
        }
    }

    /** Median and interval as words. */
    public record Cell(String median, String interval) {}

    /**
     * One place.
     *
     * @param marked whether it is the suspected one
     * @param unsure whether not even the direction of the glide is sure
     */
    public record Row(String site, boolean marked, Cell strain, Cell glide, boolean unsure, Cell load) {}
}
