package slipway.pictures.course;

import static slipway.pictures.course.Ground.n;

import java.util.ArrayList;
import java.util.List;
import slipway.pictures.chart.LabelRows;
import slipway.pictures.chart.Scale;
import slipway.pictures.course.CourseStory.Flag;

/** Visits and decisions: numbered flags over the course, their words as a list below it. */
final class FlagRow {
    private final Ground ground;
    private final List<Flag> flags;
    private final Scale days;

    FlagRow(Ground ground, List<Flag> flags, Scale days) {
        this.ground = ground;
        this.flags = flags;
        this.days = days;
    }

    private List<LabelRows.Placed> placed() {
        List<Double> places = flags.stream().map(f -> days.pixel(f.day())).toList();
        var numbers = new ArrayList<String>();
        for (int i = 0; i < flags.size(); i++) {
            // A letter wider than the number: room for the flag itself.
            numbers.add((i + 1) + "  ");
        }
        return LabelRows.of(places, numbers, Ground.TYPE, days.firstPixel() - 8, days.lastPixel() + 14);
    }

    /** Height of the rows with the numbers. */
    double height() {
        return LabelRows.rows(placed()) * Ground.ROW + 4;
    }

    /** From where to where a panel reaches. */
    record Span(double top, double bottom) {}

    /** Poles through the panels, not through the words between them. */
    void poles(List<Span> spans) {
        for (Flag flag : flags) {
            double x = days.pixel(flag.day());
            boolean decision = flag.kind() == Flag.Kind.DECISION;
            for (Span span : spans) {
                ground.line(
                        x,
                        span.top(),
                        x,
                        span.bottom(),
                        decision ? ground.accent() : ground.soft(),
                        1,
                        decision ? "" : "2 3");
            }
        }
    }

    void numbers(double top) {
        List<LabelRows.Placed> placed = placed();
        int rows = LabelRows.rows(placed);
        for (int i = 0; i < flags.size(); i++) {
            double y = top + (rows - 1 - placed.get(i).row()) * Ground.ROW + Ground.TYPE;
            sign(flags.get(i), placed.get(i).middle() - 8, y);
            ground.words(placed.get(i).middle(), y, Integer.toString(i + 1), "start", colour(flags.get(i)));
        }
    }

    /** A pennant for a decision, an open square for a visit. */
    private void sign(Flag flag, double x, double y) {
        if (flag.kind() == Flag.Kind.DECISION) {
            ground.mark("M" + n(x - 4) + " " + n(y - 10) + "l8 5l-8 5z", ground.accent(), ground.accent());
        } else {
            ground.mark("M" + n(x - 4) + " " + n(y - 9) + "h7v7h-7z", ground.paper(), ground.ink());
        }
    }

    private String colour(Flag flag) {
        return flag.kind() == Flag.Kind.DECISION ? ground.accent() : ground.ink();
    }

    /** The words, one line each or more where they are long; returns where they end. */
    double list(double top, double left, double right) {
        double y = top;
        for (int i = 0; i < flags.size(); i++) {
            Flag flag = flags.get(i);
            sign(flag, left + 5, y + Ground.TYPE);
            ground.plain(left + 16, y + Ground.TYPE, Integer.toString(i + 1), "start", colour(flag));
            String told = "week %d: %s".formatted(flag.day() / 7 + 1, flag.text());
            for (String line : Lines.of(told, right - left - 38)) {
                ground.plain(left + 38, y + Ground.TYPE, line, "start", ground.ink());
                y += Ground.ROW;
            }
        }
        return y;
    }
}
