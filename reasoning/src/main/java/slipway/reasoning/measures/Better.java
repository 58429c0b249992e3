package slipway.reasoning.measures;

/** In which direction a score gets better. */
public enum Better {
    UP(1),
    DOWN(-1);

    private final int sign;

    Better(int sign) {
        this.sign = sign;
    }

    /** Difference of two scores, positive if the second is better. */
    public double gain(double from, double to) {
        return sign * (to - from);
    }

    /** Whether a score is as good as another, or better. */
    public boolean atLeastAsGood(double score, double other) {
        return gain(other, score) >= 0;
    }
}
