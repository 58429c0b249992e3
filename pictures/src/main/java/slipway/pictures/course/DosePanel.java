package slipway.pictures.course;

import static slipway.pictures.course.Ground.n;

import java.util.List;
import java.util.stream.DoubleStream;
import slipway.pictures.chart.Scale;
import slipway.pictures.course.CourseStory.Session;
import slipway.pictures.course.CourseStory.Step;
import slipway.pictures.course.CourseStory.Tolerance;

/** Dose as a staircase below the band of the tolerance, with a mark for each session on its step. */
final class DosePanel {
    static final double HEIGHT = 150;
    private static final double MARGIN = 12;

    private final Ground ground;
    private final CourseStory story;
    private final Scale days;

    DosePanel(Ground ground, CourseStory story, Scale days) {
        this.ground = ground;
        this.story = story;
        this.days = days;
    }

    /** Draws below y and returns where it ends. */
    double draw(double top) {
        double y = top + Ground.ROW;
        ground.plain(days.firstPixel(), top + Ground.TYPE, title(), "start", ground.ink());
        ground.rect(days.firstPixel(), y, days.lastPixel() - days.firstPixel(), HEIGHT, ground.panel());
        if (story.steps().isEmpty() && story.tolerance().isEmpty()) {
            ground.plain(days.firstPixel() + 8, y + HEIGHT / 2, "No dose given yet.", "start", ground.soft());
            return y + HEIGHT;
        }
        var doses = new Scale(0, 1.05 * largest(), y + HEIGHT - MARGIN, y + MARGIN);
        for (double tick : doses.ticks(4)) {
            ground.plain(days.firstPixel() - 6, doses.pixel(tick) + 4, doses.text(tick), "end", ground.soft());
        }
        band(doses);
        staircase(doses);
        sessions(doses);
        return y + HEIGHT;
    }

    private String title() {
        return story.tolerance().isEmpty() ? "Dose, " + story.unit() : "Dose and tolerance, " + story.unit();
    }

    private double largest() {
        return Math.max(
                1e-6,
                DoubleStream.concat(
                                story.steps().stream().mapToDouble(Step::dose),
                                story.tolerance().stream().mapToDouble(Tolerance::high))
                        .max()
                        .orElse(1));
    }

    /** The band holds until the next estimate; the last one to the end of what happened. */
    private void band(Scale doses) {
        List<Tolerance> all = story.tolerance();
        for (int i = 0; i < all.size(); i++) {
            Tolerance each = all.get(i);
            double x0 = days.pixel(each.day());
            double x1 = days.pixel(i + 1 < all.size() ? all.get(i + 1).day() : until());
            double y0 = doses.pixel(each.high());
            ground.rect(x0, y0, Math.max(2, x1 - x0), doses.pixel(each.low()) - y0, ground.area(false));
            double middle = doses.pixel(each.middle());
            ground.line(x0, middle, Math.max(x0 + 2, x1), middle, ground.soft(), 2, "6 3");
        }
    }

    private void staircase(Scale doses) {
        if (story.steps().isEmpty()) {
            return;
        }
        var path = new StringBuilder();
        for (Step step : story.steps()) {
            String x = n(days.pixel(step.day()));
            path.append(path.isEmpty() ? "M" + x + " " : "H" + x + "V").append(n(doses.pixel(step.dose())));
        }
        path.append('H')
                .append(n(Math.max(
                        days.pixel(until()), days.pixel(story.steps().get(0).day()) + 4)));
        ground.stroke(path.toString(), ground.ink(), 2.5);
    }

    private void sessions(Scale doses) {
        for (Session session : story.sessions()) {
            double dose = story.steps().stream()
                    .filter(step -> step.day() <= session.day())
                    .reduce((first, second) -> second)
                    .map(Step::dose)
                    .orElse(0.0);
            Marks.session(
                    ground, days.pixel(session.day()), doses.pixel(dose), session.response(), session.settleMinutes());
        }
    }

    /** The last day on which something is known. */
    private int until() {
        int steps = story.steps().stream().mapToInt(Step::day).max().orElse(0);
        int sessions = story.sessions().stream().mapToInt(Session::day).max().orElse(0);
        int flags = story.flags().stream().mapToInt(CourseStory.Flag::day).max().orElse(0);
        int estimates =
                story.tolerance().stream().mapToInt(Tolerance::day).max().orElse(0);
        return Math.max(Math.max(steps, sessions), Math.max(flags, estimates));
    }
}
