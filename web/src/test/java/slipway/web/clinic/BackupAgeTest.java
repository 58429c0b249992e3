package slipway.web.clinic;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slipway.store.backup.BackupNote;

class BackupAgeTest {
    private static final Instant NOW = Instant.parse("2026-03-10T08:00:00Z");

    private static BackupAge made(String at) {
        return BackupAge.of(Optional.of(new BackupNote("b", Instant.parse(at), 1024, "00")), NOW, 2);
    }

    @Test
    void warnsWithoutOneAndBeyondTheDays() {
        assertThat(BackupAge.of(Optional.empty(), NOW, 2).old()).isTrue();
        assertThat(made("2026-03-09T02:00:00Z").old()).isFalse();
        assertThat(made("2026-03-08T02:00:00Z").days()).isEqualTo(2);
        assertThat(made("2026-03-08T02:00:00Z").old()).isFalse();
        assertThat(made("2026-03-07T02:00:00Z").old()).isTrue();
        // A clock that was set back does not make it old.
        assertThat(made("2026-03-11T02:00:00Z").old()).isFalse();
    }
}
