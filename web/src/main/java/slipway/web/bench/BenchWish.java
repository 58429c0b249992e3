package slipway.web.bench;

import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * How a page wants its answer.
 *
 * @param moving whether something moves just now, so that fewer draws are enough
 * @param ground light or dark, if the page knows; both pictures otherwise
 * @param width of the strip in px
 * @param dragged the joint that is being dragged: only its handle is measured anew
 */
record BenchWish(boolean moving, Optional<Ground> ground, int width, Optional<String> dragged) {
    private static final int USUAL_WIDTH = 760;
    private static final int LEAST_WIDTH = 300;
    private static final int MOST_WIDTH = 1400;

    enum Ground {
        LIGHT,
        DARK
    }

    /** What a page without a script gets. */
    static final BenchWish WHOLE = new BenchWish(false, Optional.empty(), USUAL_WIDTH, Optional.empty());

    /** Read from the fields of a script; what cannot be read is as usual, because nobody typed it. */
    static BenchWish of(Map<String, String> fields) {
        Optional<Ground> ground =
                Optional.ofNullable(fields.get("ground")).map(word -> word.equals("dark") ? Ground.DARK : Ground.LIGHT);
        Optional<String> dragged = Optional.ofNullable(fields.get("drag")).filter(joint -> !joint.isEmpty());
        return new BenchWish("few".equals(fields.get("draws")), ground, width(fields.get("width")), dragged);
    }

    private static int width(@org.jspecify.annotations.Nullable String text) {
        if (text == null || !text.matches("\\d{1,5}")) {
            return USUAL_WIDTH;
        }
        return Math.max(LEAST_WIDTH, Math.min(MOST_WIDTH, Integer.parseInt(text)));
    }

    /** Only the pictures that are needed. */
    BenchAnswer.Drawn drawn(Supplier<String> light, Supplier<String> dark) {
        return new BenchAnswer.Drawn(
                ground.filter(Ground.DARK::equals).isPresent() ? "" : light.get(),
                ground.filter(Ground.LIGHT::equals).isPresent() ? "" : dark.get());
    }
}
