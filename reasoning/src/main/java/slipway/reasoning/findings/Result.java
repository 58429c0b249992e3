package slipway.reasoning.findings;

/** What one item showed: a muscle grade or a word. */
public sealed interface Result {
    /** The result as it is written in files, for example {@code 4+} or {@code reduced}. */
    String text();

    /** Whether this is a departure from normal: a grade below 5, or any word but normal, negative and none. */
    boolean abnormal();

    /**
     * A muscle grade of the Medical Research Council scale.
     *
     * @param value 0 to 5; a plus or minus counts one third, "half" grades one half
     */
    record Grade(double value) implements Result {
        private static final double THIRD = 1.0 / 3;

        public Grade {
            if (!(value >= 0 && value <= 5)) {
                throw new IllegalArgumentException("grade must be within 0 and 5, was " + value);
            }
        }

        @Override
        public String text() {
            long whole = Math.round(value);
            double rest = value - whole;
            if (Math.abs(rest) < 1e-9) {
                return Long.toString(whole);
            }
            if (Math.abs(Math.abs(rest) - THIRD) < 1e-9) {
                return whole + (rest > 0 ? "+" : "-");
            }
            return Double.toString(value);
        }

        @Override
        public boolean abnormal() {
            return value < 5;
        }
    }

    /** A result that is a word. Which words a kind of item may have is checked by {@link Finding}. */
    enum Word implements Result {
        NORMAL,
        REDUCED,
        ABSENT,
        /** Brisk, of a reflex; over-sensitive, of skin. */
        INCREASED,
        POSITIVE,
        NEGATIVE,
        PAIN,
        TINGLING,
        NUMB,
        WEAKNESS,
        /** A complaint that was asked about and denied. */
        NONE;

        @Override
        public String text() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }

        @Override
        public boolean abnormal() {
            return this != NORMAL && this != NEGATIVE && this != NONE;
        }
    }
}
