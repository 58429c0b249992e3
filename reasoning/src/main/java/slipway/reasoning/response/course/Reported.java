package slipway.reasoning.response.course;

/** What diaries say against what was done. */
public final class Reported {
    private Reported() {}

    /**
     * Sessions that were likely done when this many were reported; diaries over-report by about a quarter.
     *
     * @param reported 0 or more
     */
    public static double likelyDone(double reported) {
        if (!(reported >= 0)) {
            throw new IllegalArgumentException("reported sessions must be 0 or more, was " + reported);
        }
        return reported * CourseData.DIARY_SHARE;
    }
}
