package slipway.mechanics.pathway;

/**
 * How the slides of the next posture are guessed from the last two changes of them: {@code last} times the change of the
 * last move and {@code first} times that of the move before it.
 */
record Foresight(double last, double first) {
    /** How far a move may be taken to go on, in lengths of the move before. */
    static final double FURTHEST = 2;

    /** Moves whose lengths differ by more than this factor say nothing of how the slides bend. */
    private static final double ALIKE = 4;

    /** Sine squared of the angle between two moves: below the first they are one line, above the second they span a plane. */
    private static final double LINE = 1e-6;

    private static final double PLANE = 0.05;

    /**
     * Along a line in which the steps go on the slides go on as a parabola; a move in the plane of the last two is put
     * together from them; any other repeats as much of the last move as it shares with it.
     *
     * @param next the move to come, joint by joint
     * @param last the move before it
     * @param first the one before that
     */
    static Foresight of(double[] next, double[] last, double[] first) {
        double square = dot(last, last);
        if (!(square > 0)) {
            return new Foresight(0, 0);
        }
        double along = Math.max(-1, Math.min(FURTHEST, dot(next, last) / square));
        double crossed = dot(last, first);
        double firstSquare = dot(first, first);
        double determinant = square * firstSquare - crossed * crossed;
        double before = crossed / square;
        if (determinant <= LINE * square * firstSquare && before > 1 / ALIKE && before < ALIKE) {
            double bend = along * (along + 1) / (1 + before);
            return new Foresight(along + bend, -bend / before);
        }
        if (determinant > PLANE * square * firstSquare) {
            double a = (dot(next, last) * firstSquare - dot(next, first) * crossed) / determinant;
            double b = (dot(next, first) * square - dot(next, last) * crossed) / determinant;
            return within(a) && within(b) ? new Foresight(a, b) : new Foresight(along, 0);
        }
        return new Foresight(along, 0);
    }

    private static boolean within(double share) {
        return Math.abs(share) <= FURTHEST;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int j = 0; j < a.length; j++) {
            sum += a[j] * b[j];
        }
        return sum;
    }
}
