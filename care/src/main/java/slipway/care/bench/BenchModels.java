package slipway.care.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import slipway.mechanics.body.Person;
import slipway.mechanics.parameters.DrawSet;
import slipway.mechanics.parameters.FittedParameters;

/**
 * Models of bodies of a few statures, kept because building one costs more than asking it. Safe for several threads.
 *
 * <p>Each body has two: one with every draw of the program, and one with the first {@value #MOVING_DRAWS} of the same
 * draws for postures that change many times a second. The second is the first with wider sampling error, not another
 * model.
 */
public final class BenchModels {
    /** Draws while something moves: two blocks of the solver, so that two cores are busy and done at once. */
    public static final int MOVING_DRAWS = 64;

    private static final int KEPT = 4;
    private static final double CM_PER_M = 100;

    private final DrawSet every = FittedParameters.bundled().standardDraws();
    private final DrawSet moving = new DrawSet(every.vectors().subList(0, MOVING_DRAWS), every.seed());
    private final Map<Integer, BenchBody> full = new Kept();
    private final Map<Integer, BenchBody> quick = new Kept();

    /** The model with every draw, for a body rounded to a whole centimetre. */
    public synchronized BenchBody full(Person person) {
        return full.computeIfAbsent(cm(person), cm -> BenchBody.of(rounded(cm), every));
    }

    /** The model with fewer draws. */
    public synchronized BenchBody quick(Person person) {
        return quick.computeIfAbsent(cm(person), cm -> BenchBody.of(rounded(cm), moving));
    }

    private static int cm(Person person) {
        return (int) Math.round(person.statureM() * CM_PER_M);
    }

    private static Person rounded(int cm) {
        return new Person(cm / CM_PER_M);
    }

    /** Forgets the body that nobody asked about for longest. */
    private static final class Kept extends LinkedHashMap<Integer, BenchBody> {
        private static final long serialVersionUID = 1L;

        Kept() {
            super(KEPT + 1, 1, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<Integer, BenchBody> eldest) {
            return size() > KEPT;
        }
    }
}
