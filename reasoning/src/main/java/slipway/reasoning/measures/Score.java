package slipway.reasoning.measures;

import java.util.List;
import java.util.OptionalDouble;

/** A score, or the reasons why there is none. */
public sealed interface Score {
    /**
     * A score.
     *
     * @param answered how many of the {@code items} were answered
     */
    record Scored(double value, int answered, int items) implements Score {
        public Scored {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("a score must be a finite number, was " + value);
            }
        }
    }

    /** No score. */
    record NotScored(List<String> reasons) implements Score {
        public NotScored {
            reasons = List.copyOf(reasons);
            if (reasons.isEmpty()) {
                throw new IllegalArgumentException("no score needs a reason");
            }
        }
    }

    /** The number, if there is one. */
    default OptionalDouble find() {
        return this instanceof Scored scored ? OptionalDouble.of(scored.value()) : OptionalDouble.empty();
    }
}
