package slipway.web.clinic;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import slipway.store.backup.BackupNote;

/**
 * How old the last backup is.
 *
 * @param days whole days since; 0 without one
 * @param mostDays beyond this it is old
 */
public record BackupAge(Optional<BackupNote> last, int days, int mostDays) {
    static BackupAge of(Optional<BackupNote> last, Instant now, int mostDays) {
        return new BackupAge(
                last,
                last.map(note -> (int)
                                Math.max(0, Duration.between(note.at(), now).toDays()))
                        .orElse(0),
                mostDays);
    }

    /** Whether there is none, or it is too old. */
    public boolean old() {
        return last.isEmpty() || days > mostDays;
    }
}
