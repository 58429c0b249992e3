package slipway.pictures.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slipway.pictures.course.CourseStory.Aim;
import slipway.pictures.course.CourseStory.Dot;
import slipway.pictures.course.CourseStory.Flag;
import slipway.pictures.course.CourseStory.Response;
import slipway.pictures.course.CourseStory.Session;
import slipway.pictures.course.CourseStory.Step;
import slipway.pictures.course.CourseStory.Strip;
import slipway.pictures.course.CourseStory.Tolerance;

/** Invented courses. */
public final class CourseStories {
    private CourseStories() {}

    /** Six weeks with a flare in week three. */
    public static CourseStory usual() {
        var sessions = new ArrayList<Session>();
        for (int day = 1; day < 42; day++) {
            if (day % 5 != 4) {
                boolean flare = day == 17 || day == 18;
                sessions.add(new Session(
                        day,
                        flare ? Response.FLARE : day % 7 == 2 ? Response.MIXED : Response.GOOD,
                        day % 11 == 0 ? OptionalDouble.empty() : OptionalDouble.of(flare ? 45 : 1 + day % 4)));
            }
        }
        sessions.add(new Session(19, Response.STOPPED, OptionalDouble.of(20)));
        return new CourseStory(
                8,
                "% strain",
                List.of(
                        new Step(0, 2.1),
                        new Step(7, 2.6),
                        new Step(14, 3.4),
                        new Step(19, 2.2),
                        new Step(25, 2.8),
                        new Step(33, 3.6)),
                sessions,
                List.of(
                        new Tolerance(0, 2.8, 4.0, 5.6), new Tolerance(14, 3.0, 4.1, 5.2),
                        new Tolerance(28, 3.9, 4.9, 6.1), new Tolerance(42, 4.6, 5.5, 6.6)),
                List.of(
                        new Strip(
                                "Roland-Morris",
                                0,
                                24,
                                false,
                                OptionalDouble.of(3.5),
                                List.of(new Dot(0, 14), new Dot(14, 12), new Dot(28, 9), new Dot(42, 7)),
                                Optional.of(new Aim(56, 5, OptionalDouble.of(0.54)))),
                        new Strip(
                                "Pain 0-10",
                                0,
                                10,
                                false,
                                OptionalDouble.of(1.25),
                                List.of(new Dot(0, 6), new Dot(14, 5), new Dot(28, 4), new Dot(42, 3)),
                                Optional.empty())),
                List.of(
                        new Flag(0, Flag.Kind.VISIT, "evaluation, trial of two glides"),
                        new Flag(14, Flag.Kind.VISIT, "visit 2"),
                        new Flag(19, Flag.Kind.DECISION, "eased two steps: two sessions took longer than 10 minutes"),
                        new Flag(28, Flag.Kind.VISIT, "visit 3"),
                        new Flag(42, Flag.Kind.VISIT, "visit 4, progress report")));
    }

    /** Names as long as they come, many flags on near days, beyond the planned weeks. */
    public static CourseStory crowded() {
        var flags = new ArrayList<Flag>();
        for (int day = 0; day < 70; day += 5) {
            flags.add(new Flag(
                    day,
                    Flag.Kind.VISIT,
                    "visit with a long account of everything that was said and done <in the room>"));
            flags.add(new Flag(day, Flag.Kind.DECISION, "held"));
        }
        return new CourseStory(
                8,
                "% strain",
                List.of(new Step(0, 2)),
                List.of(),
                List.of(new Tolerance(0, 1, 2, 30)),
                List.of(new Strip(
                        "Patient-Specific Functional Scale (carrying the shopping up three flights of stairs)",
                        0,
                        10,
                        true,
                        OptionalDouble.empty(),
                        List.of(),
                        Optional.of(new Aim(56, 7.5, OptionalDouble.of(0.02))))),
                flags);
    }

    /** Nothing at all. */
    public static CourseStory empty() {
        return new CourseStory(8, "% strain", List.of(), List.of(), List.of(), List.of(), List.of());
    }

    /** The first visit: one of everything. */
    public static CourseStory firstDay() {
        return new CourseStory(
                8,
                "rung",
                List.of(new Step(0, 1)),
                List.of(new Session(0, Response.GOOD, OptionalDouble.empty())),
                List.of(),
                List.of(new Strip(
                        "Roland-Morris",
                        0,
                        24,
                        false,
                        OptionalDouble.of(3.5),
                        List.of(new Dot(0, 14)),
                        Optional.of(new Aim(56, 5, OptionalDouble.empty())))),
                List.of(new Flag(0, Flag.Kind.VISIT, "evaluation")));
    }
}
