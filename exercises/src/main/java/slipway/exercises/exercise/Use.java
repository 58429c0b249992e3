package slipway.exercises.exercise;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import slipway.mechanics.nerve.Tract;

/**
 * What an exercise is for and against.
 *
 * @param purpose what it is for
 * @param tractKeys nerve pathways that it concerns, by their name in files; also those that are not modelled
 * @param suits what speaks for it
 * @param notFor what speaks against it
 */
public record Use(Purpose purpose, List<String> tractKeys, Set<Indication> suits, Set<Exclusion> notFor) {
    public Use {
        tractKeys = List.copyOf(tractKeys);
        suits = Set.copyOf(suits);
        notFor = Set.copyOf(notFor);
    }

    /** The pathways that the nerve model knows. */
    public List<Tract> modelledTracts() {
        return tractKeys.stream().map(Tract::find).flatMap(Optional::stream).toList();
    }
}
