package slipway.pictures.course;

import static slipway.pictures.course.Ground.n;

import java.util.List;
import java.util.OptionalDouble;
import slipway.pictures.chart.LabelRows;
import slipway.pictures.chart.Scale;
import slipway.pictures.course.CourseStory.Aim;
import slipway.pictures.course.CourseStory.Dot;
import slipway.pictures.course.CourseStory.Strip;

/** One measure: dots with error bars, better on top, the goal as a diamond with its chance. */
final class StripPanel {
    static final double HEIGHT = 76;
    private static final double MARGIN = 10;
    private static final double DIAMOND = 6;

    private final Ground ground;
    private final Strip strip;
    private final Scale days;

    StripPanel(Ground ground, Strip strip, Scale days) {
        this.ground = ground;
        this.strip = strip;
        this.days = days;
    }

    /** Draws below y and returns where it ends. */
    double draw(double top) {
        double left = days.firstPixel();
        double right = days.lastPixel();
        String goal = strip.aim().map(StripPanel::goal).orElse("");
        double room = right - left - LabelRows.widthOf(goal, Ground.TYPE) - 12;
        String name = room < 60 ? "" : fitted(strip.name(), room);
        // On a narrow picture a long goal would push the name out: then it takes a line of its own.
        double y = top + Ground.ROW;
        if (name.codePointCount(0, name.length()) < Math.min(14, strip.name().length()) && !goal.isEmpty()) {
            name = fitted(strip.name(), right - left);
            y += Ground.ROW;
        }
        ground.plain(left, top + Ground.TYPE, name, "start", ground.ink());
        ground.plain(right, y - Ground.ROW + Ground.TYPE, fitted(goal, right - left), "end", ground.accent());
        ground.rect(left, y, right - left, HEIGHT, ground.panel());
        Scale scores = scores(y);
        axis(scores);
        dots(scores, y);
        strip.aim().ifPresent(aim -> aim(aim, scores));
        return y + HEIGHT;
    }

    private static String fitted(String text, double room) {
        return text.isEmpty()
                ? ""
                : LabelRows.of(List.of(0.0), List.of(text), Ground.TYPE, 0, room)
                        .get(0)
                        .text();
    }

    static String goal(Aim aim) {
        String chance = aim.chance().isPresent()
                ? ", chance about %d %%".formatted(Math.round(100 * aim.chance().getAsDouble()))
                : "";
        return "goal " + text(aim.target()) + chance;
    }

    static String text(double score) {
        return n(score);
    }

    private Scale scores(double y) {
        double bottom = y + HEIGHT - MARGIN;
        double above = y + MARGIN;
        return strip.upIsBetter()
                ? new Scale(strip.low(), strip.high(), bottom, above)
                : new Scale(strip.low(), strip.high(), above, bottom);
    }

    private void axis(Scale scores) {
        for (double end : new double[] {strip.low(), strip.high()}) {
            ground.plain(days.firstPixel() - 6, scores.pixel(end) + 4, text(end), "end", ground.soft());
        }
    }

    private void dots(Scale scores, double top) {
        if (strip.dots().isEmpty()) {
            ground.plain(days.firstPixel() + 8, top + HEIGHT / 2 + 4, "Not measured yet.", "start", ground.soft());
            return;
        }
        var path = new StringBuilder();
        for (Dot dot : strip.dots()) {
            path.append(path.isEmpty() ? 'M' : 'L')
                    .append(n(days.pixel(dot.day())))
                    .append(' ')
                    .append(n(scores.pixel(dot.score())));
        }
        ground.stroke(path.toString(), ground.soft(), 1);
        strip.dots().forEach(dot -> dot(dot, scores, strip.error()));
    }

    private void dot(Dot dot, Scale scores, OptionalDouble error) {
        double x = days.pixel(dot.day());
        error.ifPresent(half -> {
            double low = scores.pixel(dot.score() - half);
            double high = scores.pixel(dot.score() + half);
            ground.line(x, low, x, high, ground.ink(), 1.2, "");
            ground.line(x - 3, low, x + 3, low, ground.ink(), 1.2, "");
            ground.line(x - 3, high, x + 3, high, ground.ink(), 1.2, "");
        });
        ground.mark(Marks.circle(x, scores.pixel(dot.score()), 4.2), ground.ink(), ground.paper());
    }

    private void aim(Aim aim, Scale scores) {
        double x = Math.min(days.pixel(aim.day()), days.lastPixel() - DIAMOND);
        double y = scores.pixel(aim.target());
        ground.line(days.firstPixel(), y, x, y, ground.accent(), 1, "2 4");
        ground.mark(Marks.diamond(x, y, DIAMOND), ground.accent(), ground.paper());
    }
}
