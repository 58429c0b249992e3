package slipway.mechanics.parameters;

/** The scale on which a parameter is taken to be normally distributed. */
public enum Scale {
    /** Natural logarithm: positive values. */
    LOG {
        @Override
        public double toFree(double natural) {
            return Math.log(natural);
        }

        @Override
        public double toNatural(double free) {
            return Math.exp(free);
        }
    },
    /** Log odds: values between 0 and 1. */
    LOGIT {
        @Override
        public double toFree(double natural) {
            return Math.log(natural / (1 - natural));
        }

        @Override
        public double toNatural(double free) {
            return 1 / (1 + Math.exp(-free));
        }
    };

    /** The unbounded value of a natural one. */
    public abstract double toFree(double natural);

    /** The natural value of an unbounded one. */
    public abstract double toNatural(double free);
}
