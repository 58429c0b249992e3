package slipway.reasoning.plan;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipway.reasoning.basis.Reason;

/**
 * What the screening said.
 *
 * @param level emergency, urgent, incomplete, no glides, caution or clear
 * @param rules the rules that matched
 */
public record ScreeningSummary(Level level, List<Reason> rules) {
    /** From the most to the least serious. */
    public enum Level {
        EMERGENCY(true),
        URGENT(true),
        INCOMPLETE(true),
        NO_GLIDES(true),
        CAUTION(false),
        CLEAR(false);

        private final boolean blocks;

        Level(boolean blocks) {
            this.blocks = blocks;
        }

        /** The name used in files, for example {@code no glides}. */
        @JsonValue
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }

        /** Whether no glide may be planned. */
        public boolean blocks() {
            return blocks;
        }
    }

    public ScreeningSummary {
        rules = List.copyOf(rules);
    }

    /** Why no exercise may be planned; empty if one may. */
    Optional<Reason> blocked() {
        if (!level.blocks()) {
            return Optional.empty();
        }
        String because = rules.isEmpty() ? "" : " " + rules.get(0).text();
        return Optional.of(Reason.finding(
                "screening.blocked",
                "The screening is %s: no exercise before it is resolved.%s".formatted(level.key(), because)));
    }
}
