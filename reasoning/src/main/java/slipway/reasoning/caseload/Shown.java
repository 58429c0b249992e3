package slipway.reasoning.caseload;

import java.util.function.Supplier;
import slipway.reasoning.basis.Coefficients;

/**
 * A figure with the number of people behind it, or the statement that they are too few to show it.
 *
 * @param <T> the figure
 */
public sealed interface Shown<T> {
    /** The figure. */
    record Figure<T>(T value, int people) implements Shown<T> {}

    /** Too few people; how many is not told either. */
    record TooFew<T>(int fewerThan) implements Shown<T> {}

    /** A figure if there are enough people for it. */
    static <T> Shown<T> of(int people, Supplier<T> figure) {
        return people < smallest() ? new TooFew<>(smallest()) : new Figure<>(figure.get(), people);
    }

    /**
     * A count out of some people. It is hidden too if the count or the rest of it is small but not 0: either would point
     * at few.
     */
    static Shown<Share> share(int count, int people) {
        int rest = people - count;
        boolean small = (count > 0 && count < smallest()) || (rest > 0 && rest < smallest());
        return people < smallest() || small ? new TooFew<>(smallest()) : new Figure<>(new Share(count, people), people);
    }

    /** From how many people on a figure is shown. */
    static int smallest() {
        return (int) Coefficients.load("caseload.csv").value("smallest-count");
    }

    /** A count out of a number of people. */
    record Share(int count, int of) {
        public Share {
            if (count < 0 || count > of) {
                throw new IllegalArgumentException("a share needs 0 <= count <= of, was %d of %d".formatted(count, of));
            }
        }

        public double value() {
            return of == 0 ? 0 : (double) count / of;
        }
    }
}
