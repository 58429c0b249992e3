package slipway.reasoning.findings;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A test that presses or taps a named place.
 *
 * @param tapped tapped (Tinel, percussion) rather than pressed
 * @param place as in {@code findings/places.csv}
 */
public record Pressed(boolean tapped, String place) {
    private static final Pattern NAME = Pattern.compile(
            "(palpation|tenderness|pressure|tender|tinel|tinels|percussion|tapping)_(?:sign_|test_|over_|at_|the_|of_)*(.+)");

    /** The place and manner in a name like {@code tinel_fibular_head}. */
    public static Optional<Pressed> parse(String key) {
        var match = NAME.matcher(key);
        if (!match.matches()) {
            return Optional.empty();
        }
        String manner = match.group(1);
        boolean tapped = manner.startsWith("tinel") || manner.equals("percussion") || manner.equals("tapping");
        return Optional.of(new Pressed(tapped, match.group(2)));
    }

    /** The canonical name, for example {@code tinel_fibular_head}. */
    public String key() {
        return (tapped ? "tinel_" : "palpation_") + place;
    }
}
