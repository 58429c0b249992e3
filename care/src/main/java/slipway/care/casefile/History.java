package slipway.care.casefile;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the person told.
 *
 * @param habits positions and habits that press on or provoke the nerve, for example {@code crossed-legs}
 * @param told the rest by key of the file ({@code onset}, {@code aggravating}, {@code easing}, {@code dayPattern},
 *     {@code work}, {@code drugs}, {@code pastCare}, {@code imaging}, {@code beliefs}, {@code goals}, {@code notes}),
 *     only what was written
 */
public record History(OptionalDouble durationWeeks, List<String> habits, Map<String, String> told) {
    public History {
        habits = List.copyOf(habits);
        told = Collections.unmodifiableMap(new LinkedHashMap<>(told));
    }

    /** What was written under a key. */
    public Optional<String> find(String key) {
        return Optional.ofNullable(told.get(key));
    }
}
