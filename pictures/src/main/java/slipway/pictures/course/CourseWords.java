package slipway.pictures.course;

import static slipway.pictures.course.Ground.n;

import java.util.EnumMap;
import java.util.Map;
import slipway.pictures.course.CourseStory.Dot;
import slipway.pictures.course.CourseStory.Response;
import slipway.pictures.course.CourseStory.Session;
import slipway.pictures.course.CourseStory.Step;
import slipway.pictures.course.CourseStory.Strip;
import slipway.pictures.course.CourseStory.Tolerance;

/** The course in words, for whoever does not see it. */
final class CourseWords {
    private final CourseStory story;
    private final StringBuilder text = new StringBuilder();

    private CourseWords(CourseStory story) {
        this.story = story;
    }

    static String of(CourseStory story) {
        var words = new CourseWords(story);
        words.dose();
        words.sessions();
        story.measures().forEach(words::measure);
        words.flags();
        return words.text.toString().strip();
    }

    private void dose() {
        if (story.steps().isEmpty()) {
            text.append("No dose given yet.");
        } else {
            Step first = story.steps().get(0);
            Step last = story.steps().get(story.steps().size() - 1);
            text.append("Dose from %s to %s %s in %d steps."
                    .formatted(
                            n(first.dose()),
                            n(last.dose()),
                            story.unit(),
                            story.steps().size()));
        }
        if (!story.tolerance().isEmpty()) {
            Tolerance first = story.tolerance().get(0);
            Tolerance last = story.tolerance().get(story.tolerance().size() - 1);
            text.append(" Tolerance about %s at first, about %s (%s to %s) in week %d."
                    .formatted(n(first.middle()), n(last.middle()), n(last.low()), n(last.high()), week(last.day())));
        }
    }

    private void sessions() {
        Map<Response, Integer> counts = new EnumMap<>(Response.class);
        story.sessions().forEach(each -> counts.merge(each.response(), 1, Integer::sum));
        if (counts.isEmpty()) {
            return;
        }
        text.append(" %d sessions reported:".formatted(story.sessions().size()));
        counts.forEach((response, count) -> text.append(" %d %s,".formatted(count, response.words())));
        text.setLength(text.length() - 1);
        story.sessions().stream()
                .map(Session::settleMinutes)
                .filter(java.util.OptionalDouble::isPresent)
                .mapToDouble(java.util.OptionalDouble::getAsDouble)
                .max()
                .ifPresent(longest -> text.append("; the longest took %s minutes to settle".formatted(n(longest))));
        text.append('.');
    }

    private void measure(Strip strip) {
        text.append(' ').append(strip.name());
        if (strip.dots().isEmpty()) {
            text.append(": not measured yet");
        } else {
            Dot last = strip.dots().get(strip.dots().size() - 1);
            text.append(": ").append(n(strip.dots().get(0).score()));
            if (strip.dots().size() > 1) {
                text.append(" at first, %s in week %d".formatted(n(last.score()), week(last.day())));
            }
            strip.error().ifPresent(half -> text.append(", error about %s".formatted(n(half))));
            text.append(strip.upIsBetter() ? ", more is better" : ", less is better");
        }
        strip.aim()
                .ifPresent(aim -> text.append("; ").append(StripPanel.goal(aim)).append(" in week " + week(aim.day())));
        text.append('.');
    }

    private void flags() {
        for (int i = 0; i < story.flags().size(); i++) {
            var flag = story.flags().get(i);
            text.append(" %s %d, week %d: %s."
                    .formatted(
                            flag.kind().words(),
                            i + 1,
                            week(flag.day()),
                            flag.text().replaceAll("\\.$", "")));
        }
    }

    private static int week(int day) {
        return day / 7 + 1;
    }
}
