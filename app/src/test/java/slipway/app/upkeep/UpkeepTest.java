package slipway.app.upkeep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipway.app.console.BadInputException;
import slipway.app.records.BackupFolder;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.EpisodeState;
import slipway.care.record.person.PersonDetails;
import slipway.mechanics.body.Side;
import slipway.store.Store;
import slipway.store.StoreSettings;
import slipway.store.backup.BackupKey;
import slipway.store.work.WorkNote;
import slipway.store.work.Worker;
import tools.jackson.databind.json.JsonMapper;

/** What is done on a schedule, on records in a file; two servers on one database are in {@code NodesTest}. */
class UpkeepTest {
    private static final Instant NOON = Instant.parse("2026-03-02T12:00:00Z");
    private static final Act PROGRAM = new Act("import", Role.PROGRAM, "harbour", NOON);
    private static final BackupKey KEY = BackupKey.ofFile(new byte[32]);

    @TempDir
    private Path folder = Path.of("");

    private Path backups = Path.of("");
    private Path records = Path.of("");

    @BeforeEach
    void folders() throws IOException {
        backups = Files.createDirectory(folder.resolve("backups"));
        records = Files.createDirectory(folder.resolve("records"));
    }

    private Store store() {
        Store store = Store.open(StoreSettings.inFolder(records));
        store.records().clinics().add("Harbour Street", "therapy", "", "112", true, PROGRAM);
        return store;
    }

    private NightlyBackup nightly(int keep) {
        return new NightlyBackup(backups, LocalTime.of(2, 0), KEY, keep);
    }

    private Worker worker(Store store, Optional<NightlyBackup> backup, Instant now) {
        return Upkeep.worker(store, records, backup, Clock.fixed(now, ZoneOffset.UTC), () -> "");
    }

    @Test
    void theBackupOfTheNightBringsEverythingBackAndIsMadeOnce() throws IOException {
        String digest;
        try (Store store = store();
                Worker one = worker(store, Optional.of(nightly(5)), NOON);
                Worker other = worker(store, Optional.of(nightly(5)), NOON.plusSeconds(1))) {
            chart(
                    store,
                    store.records().people().add(person("Ines Palo"), PROGRAM).id());
            digest = store.records().trail().verify().headsDigest();
            one.round();
            other.round();
            WorkNote note = store.work().note(NightlyBackup.NAME).orElseThrow();
            assertThat(note.failures()).isZero();
            assertThat(note.words()).contains("1 people").doesNotContain("Ines");
            assertThat(Duration.between(note.succeededAt().orElseThrow(), Instant.now()))
                    .isLessThan(Duration.ofMinutes(5));
            assertThat(store.backups().last()).isPresent();
        }
        List<Path> made = new BackupFolder(backups).list();
        assertThat(made).hasSize(1);
        Path back = folder.resolve("back");
        assertThat(Store.restore(made.get(0), KEY, StoreSettings.inFolder(back), back, NOON)
                        .trail()
                        .headsDigest())
                .isEqualTo(digest);
        try (Store again = Store.open(StoreSettings.inFolder(back))) {
            assertThat(again.records().people().untouchedSince(NOON, "", 9, PROGRAM))
                    .isEmpty();
            assertThat(again.records().clinics().list()).hasSize(1);
        }
    }

    @Test
    void aFailedBackupIsOnTheRecordAndDeletesNothing() throws IOException {
        Path older = Files.createFile(backups.resolve("slipway-20260301T020000Z.slipway-backup"));
        Path inTheWay = Files.createFile(new BackupFolder(backups).file(NOON));
        try (Store store = store();
                Worker worker = worker(store, Optional.of(nightly(1)), NOON)) {
            worker.round();
            WorkNote note = store.work().note(NightlyBackup.NAME).orElseThrow();
            assertThat(note.failures()).isEqualTo(1);
            assertThat(note.words()).contains("FileAlreadyExists");
            assertThat(note.succeededAt()).isEmpty();
        }
        assertThat(older).exists();
        assertThat(inTheWay).exists();
    }

    @Test
    void onlyTheNewestRemain() throws IOException {
        Files.createFile(backups.resolve("slipway-20260228T020000Z.slipway-backup"));
        Path newer = Files.createFile(backups.resolve("slipway-20260301T020000Z.slipway-backup"));
        Path foreign = Files.createFile(backups.resolve("notes.txt"));
        try (Store store = store();
                Worker worker = worker(store, Optional.of(nightly(2)), NOON)) {
            worker.round();
        }
        assertThat(new BackupFolder(backups).list()).containsExactly(new BackupFolder(backups).file(NOON), newer);
        assertThat(foreign).exists();
    }

    @Test
    void whatCannotWorkIsRefusedAtTheStart() {
        assertThatThrownBy(() -> new NightlyBackup(folder.resolve("nowhere"), LocalTime.NOON, KEY, 3))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("nowhere");
        assertThatThrownBy(() -> nightly(0))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("0");
    }

    @Test
    void theEndOfKeepingIsToldAndNobodyIsErased() {
        try (Store store = store()) {
            Act then = PROGRAM.at(NOON.minus(Duration.ofDays(4000)));
            String person =
                    store.records().people().add(person("Ines Palo"), then).id();
            chart(store, person, then)
                    .change(1, Side.LEFT, "import", EpisodeState.CLOSED)
                    .orThrow();
            var keeping = new Keeping(store.records(), Clock.fixed(NOON, ZoneOffset.UTC));
            assertThat(keeping.run()).isEmpty();
            store.records().clinics().set("retention.years", 0, "10", PROGRAM).orThrow();
            assertThat(keeping.run()).contains("harbour").contains("over for 1");
            assertThat(store.records().people().find(person, PROGRAM)).isPresent();
        }
    }

    private static Chart chart(Store store, String person) {
        Chart chart = chart(store, person, PROGRAM);
        chart.checkIns()
                .add("check-in-1", "session", "some-glide", JsonMapper.shared().createObjectNode());
        return chart;
    }

    private static Chart chart(Store store, String person, Act act) {
        return store.records().charts().begin(person, Side.LEFT, act.userId(), Map.of(), act);
    }

    private static PersonDetails person(String name) {
        return PersonDetails.invented(name);
    }
}
