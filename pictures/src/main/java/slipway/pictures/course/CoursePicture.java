package slipway.pictures.course;

import java.util.ArrayList;
import java.util.List;
import slipway.pictures.chart.Scale;
import slipway.pictures.look.Palette;
import slipway.pictures.svg.Words;

/** Draws the course of an episode, weeks from left to right. */
public final class CoursePicture {
    private static final double LEFT = 46;
    private static final double RIGHT = 14;
    private static final double GAP = 10;
    private static final int DAYS_PER_WEEK = 7;

    private final CourseStory story;
    private final Ground ground;
    private final Scale days;
    private final int width;
    private final List<FlagRow.Span> spans = new ArrayList<>();

    private CoursePicture(CourseStory story, Palette palette, int width) {
        this.story = story;
        this.ground = new Ground(palette);
        this.width = width;
        this.days = new Scale(0, story.lastDay(), LEFT, width - RIGHT);
    }

    /**
     * The course as SVG; as high as it needs.
     *
     * @param width in px, 320 to 2000
     * @param idPrefix makes ids unique within a page
     */
    public static String svg(CourseStory story, Palette palette, int width, String idPrefix) {
        if (width < 320 || width > 2000) {
            throw new IllegalArgumentException("the width of a course must be within 320 and 2000 px, was " + width);
        }
        return new CoursePicture(story, palette, width).draw(idPrefix);
    }

    private String draw(String idPrefix) {
        var flags = new FlagRow(ground, story.flags(), days);
        // Drawn twice: the first time only to learn how high it gets, so that the ground can lie underneath.
        double end = new CoursePicture(story, Palette.PAPER, width).panels(flags.height() + GAP);
        ground.rect(0, 0, width, height(end), ground.paper());
        panels(flags.height() + GAP);
        flags.poles(spans);
        flags.numbers(GAP / 2);
        double below = weeks(end);
        below = new Legend(ground, LEFT - 32, width - RIGHT).draw(story, below);
        flags.list(below + 4, LEFT - 32, width - RIGHT);
        ground.svg().close();
        return ground.svg()
                .document(
                        new Words(idPrefix, "Course of care", CourseWords.of(story)),
                        0,
                        0,
                        width,
                        Math.round(height(end)));
    }

    private double height(double end) {
        var scratch = new CoursePicture(story, Palette.PAPER, width);
        double below = scratch.weeks(end);
        below = new Legend(scratch.ground, LEFT - 32, width - RIGHT).draw(story, below);
        return new FlagRow(scratch.ground, story.flags(), days).list(below + 4, LEFT - 32, width - RIGHT) + 8;
    }

    private double panels(double top) {
        var dose = new DosePanel(ground, story, days);
        double y = dose.draw(top);
        spans.add(new FlagRow.Span(y - DosePanel.HEIGHT, y));
        for (CourseStory.Strip strip : story.measures()) {
            y = new StripPanel(ground, strip, days).draw(y + GAP);
            spans.add(new FlagRow.Span(y - StripPanel.HEIGHT, y));
        }
        return y;
    }

    /** Week numbers in the middle of their weeks, as many as there is room for. */
    private double weeks(double y) {
        int weeks = (int) days.high() / DAYS_PER_WEEK;
        int every = 1 + (int) (weeks * 26 / (days.lastPixel() - days.firstPixel()));
        for (int week = 0; week <= weeks; week++) {
            double x = days.pixel(week * DAYS_PER_WEEK);
            ground.line(x, y, x, y + 5, ground.soft(), 1, "");
            if (week < weeks && week % every == 0) {
                double middle = days.pixel(week * DAYS_PER_WEEK + DAYS_PER_WEEK / 2.0);
                ground.plain(middle, y + 6 + Ground.TYPE, Integer.toString(week + 1), "middle", ground.soft());
            }
        }
        ground.plain(LEFT - 6, y + 6 + Ground.TYPE, "week", "end", ground.soft());
        return y + 6 + Ground.ROW + 6;
    }
}
