package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.care.record.trail.TrailReport;
import slipway.store.backup.BackupKey;
import slipway.store.backup.BackupReport;
import slipway.store.backup.DamageException;
import slipway.store.backup.Restoring;
import slipway.store.db.StoreFailure;
import slipway.store.session.KeptSession;

class BackupTest {
    private static final BackupKey KEY =
            BackupKey.ofFile("0123456789abcdef0123456789abcdef".getBytes(StandardCharsets.US_ASCII));

    @TempDir
    private Path folder = Path.of("");

    private Path backup() {
        return folder.resolve("clinic.backup");
    }

    private static Chart filled(World world) {
        Act act = World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST);
        Chart chart = world.chart(world.person("Ines Palo", act), act);
        chart.save(Section.SITES, 0, World.json("{\"sites\":{\"a\":1}}")).orThrow();
        chart.checkIns().add("check-in-0001", "session", "some-glide", World.json("{\"worst\":2}"));
        chart.documents().add("sheet", "application/pdf", new byte[] {0, 1, -1}, java.util.OptionalInt.empty());
        world.store
                .sessions()
                .add(new KeptSession(
                        "secret-id", Optional.empty(), new byte[] {1}, World.NOON, World.NOON.plusSeconds(60)));
        return chart;
    }

    static Stream<Arguments> fromAndTo() {
        return Stream.of(Databases.values())
                .flatMap(from -> Stream.of(Databases.values()).map(to -> Arguments.of(from, to)));
    }

    @ParameterizedTest
    @MethodSource("fromAndTo")
    void whatIsBroughtBackIsWhatWasThere(Databases from, Databases to) throws IOException {
        TrailReport before;
        String episode;
        try (var world = new World(from)) {
            episode = filled(world).episode().id();
            before = world.records.trail().verify();
            BackupReport report = world.store.backups().write(backup(), KEY, folder, World.NOON);
            assertThat(report).isEqualTo(new BackupReport(before, 1));
        }
        try (Databases.Fresh empty = to.fresh()) {
            BackupReport back = Store.restore(backup(), KEY, empty.settings(), folder, World.NOON);
            assertThat(back.trail()).isEqualTo(before);
            try (Store store = Store.open(empty.settings())) {
                Act program = World.PROGRAM;
                Chart chart = store.records()
                        .charts()
                        .open(episode, program)
                        .chartIfOpen()
                        .orElseThrow();
                assertThat(chart.section(Section.SITES).content()).isEqualTo(World.json("{\"sites\":{\"a\":1}}"));
                assertThat(chart.checkIns().list()).hasSize(1);
                String document = chart.documents().list().get(0).id();
                assertThat(chart.documents().bytes(document).orElseThrow()).containsExactly(0, 1, -1);
                assertThat(store.sessions().find("secret-id", World.NOON)).isEmpty();
                assertThat(store.records().trail().verify().breaks()).isEmpty();
                assertThat(store.records().trail().list(Chain.ofClinic(World.CLINIC), 0, 1))
                        .singleElement()
                        .satisfies(entry -> assertThat(entry.action()).isEqualTo(Action.IMPORT));
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void aBackupWhileOthersWriteIsOneMomentAndWhole(Databases kind) throws Exception {
        try (var world = new World(kind)) {
            Chart chart = filled(world);
            var stop = new AtomicBoolean();
            var writer = new Thread(() -> {
                for (int i = 0; !stop.get(); i++) {
                    chart.checkIns().add("written-meanwhile-" + i, "session", "some-glide", World.json("{}"));
                }
            });
            writer.start();
            BackupReport report = world.store.backups().write(backup(), KEY, folder, World.NOON);
            stop.set(true);
            writer.join();
            // An entry of the trail without its record, or a head without its entry, would show here.
            assertThat(report.trail().breaks()).isEmpty();
            assertThat(world.store.backups().last().orElseThrow().sizeBytes()).isEqualTo(Files.size(backup()));
        }
    }

    @ParameterizedTest
    @EnumSource
    void nothingIsOverwritten(Databases kind) throws IOException {
        try (var world = new World(kind);
                Databases.Fresh full = kind.fresh()) {
            filled(world);
            world.store.backups().write(backup(), KEY, folder, World.NOON);
            assertThatThrownBy(() -> world.store.backups().write(backup(), KEY, folder, World.NOON))
                    .isInstanceOf(FileAlreadyExistsException.class);
            Store.restore(backup(), KEY, full.settings(), folder, World.NOON);
            assertThatThrownBy(() -> Store.restore(backup(), KEY, full.settings(), folder, World.NOON))
                    .isInstanceOfAny(FileAlreadyExistsException.class, StoreFailure.class)
                    .hasMessageContaining("already");
        }
    }

    @Test
    void damageAnywhereIsFoundAndNothingIsMade() throws IOException {
        try (var world = new World(Databases.SQLITE)) {
            filled(world);
            world.store.backups().write(backup(), KEY, folder, World.NOON);
        }
        byte[] whole = Files.readAllBytes(backup());
        var random = new Random(20);
        Path target = folder.resolve("back/slipway.db");
        Files.createDirectories(target.getParent());
        for (int i = 0; i < 120; i++) {
            // Every byte of the beginning, then some of the rest.
            int at = i < 60 ? i : random.nextInt(whole.length);
            byte[] changed = whole.clone();
            changed[at] ^= (byte) (1 << random.nextInt(8));
            assertRefused(changed, target, "byte " + at);
        }
        for (int i = 0; i < 20; i++) {
            int length = random.nextInt(whole.length);
            assertRefused(java.util.Arrays.copyOf(whole, length), target, "cut at " + length);
        }
        assertRefused(java.util.Arrays.copyOf(whole, whole.length + 1), target, "one more byte");
        assertRefused("no backup at all".getBytes(StandardCharsets.UTF_8), target, "another file");
        assertThat(target.getParent()).isEmptyDirectory();
    }

    private void assertRefused(byte[] content, Path target, String what) throws IOException {
        Path file = Files.write(folder.resolve("changed.backup"), content);
        assertThatThrownBy(() -> Restoring.intoFile(file, KEY, target, World.NOON))
                .as(what)
                .isInstanceOf(DamageException.class);
    }

    @Test
    void onlyTheRightPassphraseOpens() throws IOException {
        BackupKey right = BackupKey.ofPassphrase("correct lamp river stone".toCharArray());
        try (var world = new World(Databases.SQLITE)) {
            filled(world);
            world.store.backups().write(backup(), right, folder, World.NOON);
        }
        BackupKey wrong = BackupKey.ofPassphrase("correct lamp river stones".toCharArray());
        assertThatThrownBy(() -> Restoring.check(backup(), wrong, folder))
                .isInstanceOf(DamageException.class)
                .hasMessageContaining("key does not fit");
        assertThatThrownBy(() -> Restoring.check(backup(), KEY, folder)).hasMessageContaining("a passphrase");
        assertThat(Restoring.check(backup(), right, folder).people()).isEqualTo(1);
        assertThat(new String(Files.readAllBytes(backup()), StandardCharsets.ISO_8859_1))
                .doesNotContain("Palo");
    }
}
