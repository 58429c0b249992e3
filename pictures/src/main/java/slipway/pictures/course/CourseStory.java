package slipway.pictures.course;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What the course shows. Days count from the first day of care, which is 0.
 *
 * @param weeks planned, at least 1; the picture grows if something lies later
 * @param unit of doses and tolerance, for example {@code % strain} or {@code rung}
 * @param steps the dose from a day on, rising days
 * @param tolerance how it was estimated on some days, rising days; may be empty
 */
public record CourseStory(
        int weeks,
        String unit,
        List<Step> steps,
        List<Session> sessions,
        List<Tolerance> tolerance,
        List<Strip> measures,
        List<Flag> flags) {
    private static final int DAYS_PER_WEEK = 7;
    private static final int MAX_DAY = 730;

    public CourseStory {
        if (weeks < 1 || weeks * DAYS_PER_WEEK > MAX_DAY) {
            throw new IllegalArgumentException("the weeks of a course must be within 1 and 104, were " + weeks);
        }
        steps = List.copyOf(steps);
        sessions = List.copyOf(sessions);
        tolerance = List.copyOf(tolerance);
        measures = List.copyOf(measures);
        flags = List.copyOf(flags);
    }

    /** The dose from a day on: its highest load, or its rung. */
    public record Step(int day, double dose) {
        public Step {
            checked(day, dose);
        }
    }

    /**
     * One session.
     *
     * @param settleMinutes until symptoms were back at their usual level; empty if not reported
     */
    public record Session(int day, Response response, OptionalDouble settleMinutes) {
        public Session {
            checked(day, settleMinutes.orElse(0));
        }
    }

    /** How a session went. */
    public enum Response {
        GOOD("good"),
        MIXED("some symptoms"),
        FLARE("flare"),
        STOPPED("stopped early");

        private final String words;

        Response(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /** The tolerance as estimated on a day: 10, 50 and 90 % points. */
    public record Tolerance(int day, double low, double middle, double high) {
        public Tolerance {
            checked(day, low);
            checked(day, high);
            if (!(low <= middle && middle <= high)) {
                throw new IllegalArgumentException(
                        "a tolerance must rise from low to high, was %s, %s, %s".formatted(low, middle, high));
            }
        }
    }

    /**
     * The scores of one measure.
     *
     * @param low lowest possible score, {@code high} the highest
     * @param upIsBetter whether more is better; the picture always puts better on top
     * @param error half of the interval that a score's error spans; empty if unknown
     */
    public record Strip(
            String name,
            double low,
            double high,
            boolean upIsBetter,
            OptionalDouble error,
            List<Dot> dots,
            Optional<Aim> aim) {
        public Strip {
            dots = List.copyOf(dots);
            if (name.isBlank() || !(low < high)) {
                throw new IllegalArgumentException(
                        "a measure needs a name and low < high, was \"%s\" %s..%s".formatted(name, low, high));
            }
        }
    }

    /** A score. */
    public record Dot(int day, double score) {
        public Dot {
            checked(day, score);
        }
    }

    /**
     * A goal.
     *
     * @param chance of reaching it, 0 to 1; empty if it can't be said
     */
    public record Aim(int day, double target, OptionalDouble chance) {
        public Aim {
            checked(day, target);
            if (!(chance.orElse(0) >= 0 && chance.orElse(0) <= 1)) {
                throw new IllegalArgumentException("a chance must be within 0 and 1, was " + chance);
            }
        }
    }

    /** A visit or a decision; numbered in the picture and told below it. */
    public record Flag(int day, Kind kind, String text) {
        public Flag {
            checked(day, 0);
            if (text.isBlank()) {
                throw new IllegalArgumentException("a flag needs words");
            }
        }

        /** What it stands for. */
        public enum Kind {
            VISIT("Visit"),
            DECISION("Decision");

            private final String words;

            Kind(String words) {
                this.words = words;
            }

            String words() {
                return words;
            }
        }
    }

    private static void checked(int day, double value) {
        if (day < 0 || day > MAX_DAY || !Double.isFinite(value)) {
            throw new IllegalArgumentException("a day must be within 0 and %d and its value finite, was day %d, %s"
                    .formatted(MAX_DAY, day, value));
        }
    }

    /** Days shown: the planned weeks, or whole weeks up to the last thing that happened. */
    int lastDay() {
        int last = Stream.of(
                        steps.stream().mapToInt(Step::day),
                        sessions.stream().mapToInt(Session::day),
                        tolerance.stream().mapToInt(Tolerance::day),
                        flags.stream().mapToInt(Flag::day),
                        measures.stream().flatMapToInt(CourseStory::days))
                .flatMapToInt(days -> days)
                .max()
                .orElse(0);
        return DAYS_PER_WEEK * Math.max(weeks, (last + DAYS_PER_WEEK - 1) / DAYS_PER_WEEK);
    }

    private static IntStream days(Strip strip) {
        return IntStream.concat(
                strip.dots().stream().mapToInt(Dot::day), strip.aim().stream().mapToInt(Aim::day));
    }
}
