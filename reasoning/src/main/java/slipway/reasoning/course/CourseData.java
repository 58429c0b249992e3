package slipway.reasoning.course;

import slipway.reasoning.basis.Coefficient;
import slipway.reasoning.basis.Coefficients;

/** The numbers of {@code course.csv}. */
final class CourseData {
    private static final Coefficients DATA = Coefficients.load("course/course.csv");
    private static final int DAYS_PER_WEEK = 7;

    private CourseData() {}

    static Coefficient row(String id) {
        return DATA.get(id);
    }

    static double value(String id) {
        return DATA.value(id);
    }

    static int whole(String id) {
        return (int) DATA.value(id);
    }

    static int weeksAsDays(String id) {
        return DAYS_PER_WEEK * whole(id);
    }
}
