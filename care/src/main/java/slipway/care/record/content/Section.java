package slipway.care.record.content;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A part of the case that is edited and locked as one. It holds top-level keys of the case file. What the case file says
 * under {@code person} and {@code language} is kept with the person, {@code side} with the episode.
 */
public enum Section {
    /** Name and origin of the case; the clinic only if it differs from the clinic of the episode. */
    FRAME("id", "invented", "source", "inventedParts", "clinic"),
    HISTORY("history", "abilities"),
    SCREENING("screening", "wells", "clearances"),
    EXAMINATION("examination", "spine"),
    TOLERANCE(
            "irritability",
            "rangeOfMotion",
            "tests",
            "pressureLimits",
            "sittingMinutes",
            "comfortablePositions",
            "restPosture"),
    SITES("sites"),
    CHOICES("choices"),
    /** What papers need and a case does not hold: payer, referrer, what was sent, words of the visits. No part of the case. */
    PAPERWORK("paperwork");

    @SuppressWarnings("ImmutableEnumChecker") // List.of gives one that nobody can change
    private final List<String> keys;

    Section(String... keys) {
        this.keys = List.of(keys);
    }

    /** The top-level keys of the case file that it holds. */
    public List<String> keys() {
        return keys;
    }

    /** Whether it is a part of the case file. */
    public boolean ofCase() {
        return this != PAPERWORK;
    }

    /** Its name in addresses and in the database, for example {@code tolerance}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The section with this {@link #key()}. */
    public static Optional<Section> find(String key) {
        return Arrays.stream(values())
                .filter(section -> section.key().equals(key))
                .findFirst();
    }

    /** The section that holds a top-level key of the case file. */
    public static Optional<Section> holding(String caseKey) {
        return Arrays.stream(values())
                .filter(section -> section.keys.contains(caseKey))
                .findFirst();
    }
}
