package slipway.care.facts;

import java.time.LocalDate;
import java.util.Collections;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import slipway.reasoning.measures.Measure;
import slipway.reasoning.measures.Measures;

/**
 * A measure as it was taken.
 *
 * @param total as it was entered; must be a possible score
 * @param answers by item from 1; used if there is no total
 */
public record Taken(Measure measure, LocalDate day, OptionalDouble total, SortedMap<Integer, Double> answers) {
    public Taken {
        answers = Collections.unmodifiableSortedMap(new TreeMap<>(answers));
        if (total.isPresent()) {
            measure.total(total.getAsDouble());
        }
        if (total.isEmpty() && answers.isEmpty()) {
            throw new IllegalArgumentException("%s needs a total or answers".formatted(measure.name()));
        }
    }

    /** The score; empty if too few items were answered. */
    public Optional<Double> score() {
        OptionalDouble found =
                total.isPresent() ? total : measure.score(answers).find();
        return found.isPresent() ? Optional.of(found.getAsDouble()) : Optional.empty();
    }

    static Measure measure(String id) {
        return Measures.bundled().get(id);
    }
}
