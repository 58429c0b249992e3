package slipway.pictures.course;

import java.util.OptionalDouble;
import slipway.pictures.chart.LabelRows;
import slipway.pictures.course.CourseStory.Response;

/** What the marks of sessions mean; only for shapes that occur. */
final class Legend {
    private static final double SHORT_MINUTES = 2;
    private static final double LONG_MINUTES = 60;

    private final Ground ground;
    private final double left;
    private final double right;
    private double x;
    private double y;

    Legend(Ground ground, double left, double right) {
        this.ground = ground;
        this.left = left;
        this.right = right;
    }

    /** Draws below y and returns where it ends. */
    double draw(CourseStory story, double top) {
        if (story.sessions().isEmpty()) {
            return top;
        }
        x = left;
        y = top;
        for (Response response : Response.values()) {
            if (story.sessions().stream().anyMatch(each -> each.response() == response)) {
                entry(response, OptionalDouble.of(10), response.words());
            }
        }
        entry(Response.GOOD, OptionalDouble.of(SHORT_MINUTES), "settled in 2 min");
        entry(Response.GOOD, OptionalDouble.of(LONG_MINUTES), "in an hour");
        if (story.sessions().stream().anyMatch(each -> each.settleMinutes().isEmpty())) {
            entry(Response.GOOD, OptionalDouble.empty(), "not told");
        }
        return y + Ground.ROW;
    }

    private void entry(Response response, OptionalDouble minutes, String words) {
        double wide = 22 + LabelRows.widthOf(words, Ground.TYPE) + 16;
        if (x > left && x + wide > right) {
            x = left;
            y += Ground.ROW;
        }
        Marks.session(ground, x + 9, y + Ground.TYPE - 5, response, minutes);
        ground.plain(x + 22, y + Ground.TYPE, words, "start", ground.soft());
        x += wide;
    }
}
