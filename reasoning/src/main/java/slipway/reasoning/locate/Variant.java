package slipway.reasoning.locate;

import java.util.Map;

/**
 * One way in which a site can be hit.
 *
 * @param site index of the site
 * @param weight its share among the ways of that site
 * @param bilateral whether it takes both sides
 * @param hit severity per root or node; a muscle with {@code @} is weak through pain
 * @param motor how much of the severity muscles feel, 0 to 1
 * @param sensory how much of the severity skin feels, 0 to 1
 * @param systemic what else is lost by the nature of the lesion
 * @param text in words, for example {@code severity 0.75, feeling spared}
 */
record Variant(
        int site,
        double weight,
        boolean bilateral,
        Map<String, Double> hit,
        double motor,
        double sensory,
        Systemic systemic,
        String text) {
    /** Lesions that are not a place on a nerve. */
    sealed interface Systemic {
        /** Nothing of the kind. */
        record None() implements Systemic {}

        /** Fibres lost from the far end up to a length. */
        record LengthDependent(double severity, double from) implements Systemic {}

        /** A lesion of brain or cord. */
        record UpperMotorNeurone(double severity) implements Systemic {}
    }

    Variant {
        hit = Map.copyOf(hit);
    }

    Variant withWeight(double changed) {
        return new Variant(site, changed, bilateral, hit, motor, sensory, systemic, text);
    }
}
