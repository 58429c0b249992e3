package slipway.web.episode;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import slipway.care.record.content.Section;

/** The steps of the job, in their order. */
public enum Step {
    HISTORY(Section.HISTORY),
    SCREEN(Section.SCREENING),
    EXAMINE(Section.EXAMINATION),
    LOCATE(Section.SITES),
    TOLERANCE(Section.TOLERANCE),
    PLAN(Section.CHOICES),
    TRY(null),
    FOLLOW(null),
    MEASURE(null),
    WRITE(Section.PAPERWORK);

    private final @Nullable Section section;

    Step(@Nullable Section section) {
        this.section = section;
    }

    /** Its name in addresses. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The section of the record that its form edits. */
    public Optional<Section> section() {
        return Optional.ofNullable(section);
    }

    /** The step that comes after this one; the last is followed by itself. */
    public Step next() {
        return values()[Math.min(ordinal() + 1, values().length - 1)];
    }

    public static Optional<Step> find(String key) {
        return Arrays.stream(values()).filter(step -> step.key().equals(key)).findFirst();
    }

    public static Step editing(Section section) {
        return Arrays.stream(values())
                .filter(step -> step.section().filter(section::equals).isPresent())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no step edits section " + section.key()));
    }
}
