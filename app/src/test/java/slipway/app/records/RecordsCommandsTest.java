package slipway.app.records;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipway.app.Run;
import slipway.app.console.ExitStatus;
import slipway.care.casefile.CaseFiles;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.person.PersonDetails;
import slipway.store.Store;
import slipway.store.StoreSettings;
import slipway.store.backup.BackupKey;

class RecordsCommandsTest {
    @TempDir
    private Path folder = Path.of("");

    private static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("..", "examples"))) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    private String data() {
        return folder.resolve("data").toString();
    }

    private Run importAll() throws IOException {
        Stream<String> args = Stream.concat(
                Stream.of("import", "--data", data(), "--new-clinic", "Harbour Steps"),
                examples().stream().map(Path::toString));
        return Run.of(args.toArray(String[]::new));
    }

    @Test
    void everyExampleGoesInAndComesOutTheSame() throws IOException {
        Run in = importAll();
        assertThat(in.err()).isEmpty();
        Run out = Run.of(
                "export",
                "--all",
                "--data",
                data(),
                "--out",
                folder.resolve("out").toString());
        assertThat(out.status()).isEqualTo(ExitStatus.OK);
        for (String line : in.out().lines().toList()) {
            String[] idAndFile = line.split("  ", 2);
            Path exported = folder.resolve("out").resolve(idAndFile[0] + ".yaml");
            assertThat(values(exported)).isEqualTo(values(Path.of(idAndFile[1])));
        }
    }

    /** Findings carry the line they stood in, for messages; apart from that the values must be equal. */
    private static String values(Path file) throws IOException {
        return CaseFiles.read(Files.readAllBytes(file), "case").toString().replaceAll("line \\d+", "");
    }

    @Test
    void aTrailThatWasTamperedWithIsToldWithItsPlace() throws Exception {
        importAll();
        Run whole = Run.of("audit", "verify", "--data", data());
        assertThat(whole.status()).isEqualTo(ExitStatus.OK);
        String digest = whole.out().lines().reduce((first, last) -> last).orElseThrow();
        assertThat(Run.of("audit", "verify", "--data", data(), "--expect", digest)
                        .status())
                .isEqualTo(ExitStatus.OK);

        try (var connection = java.sql.DriverManager.getConnection(
                        StoreSettings.inFolder(Path.of(data())).url());
                var statement = connection.createStatement()) {
            statement.execute("update trail_entry set who = 'somebody' where seq = 2 and entity = 'episode'");
        }
        Run broken = Run.of("audit", "verify", "--data", data());
        assertThat(broken.status()).isEqualTo(ExitStatus.DAMAGE);
        assertThat(broken.out()).contains("entry 2: it is not the entry that was written");
    }

    @Test
    void oneBadFileKeepsAllOut() throws IOException {
        Path bad = Files.writeString(folder.resolve("bad.yaml"), "format: 1\nid: x\nside: middle\n");
        String good = examples().get(0).toString();
        Run run = Run.of("import", good, bad.toString(), "--data", data(), "--new-clinic", "Harbour Steps");
        assertThat(run.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(run.err()).contains("bad.yaml", "side");
        assertThat(Path.of(data())).doesNotExist();
    }

    @Test
    void recordsThatAreNotThereAreNotMade() {
        for (List<String> command : List.of(List.of("export", "--all", "--out", data()), List.of("audit", "verify"))) {
            Run run = Run.of(
                    Stream.concat(command.stream(), Stream.of("--data", data())).toArray(String[]::new));
            assertThat(run.status()).isEqualTo(ExitStatus.BAD_INPUT);
            assertThat(run.err()).contains("holds no records");
            assertThat(Path.of(data())).doesNotExist();
        }
    }

    @Test
    void anEpisodeThatIsNoWholeCaseYetIsToldWithWhatIsMissing() throws IOException {
        importAll();
        String episode;
        try (Store store = Store.open(StoreSettings.inFolder(Path.of(data())))) {
            String clinic = store.records().clinics().list().get(0).id();
            var act = new Act("test", Role.PROGRAM, clinic, java.time.Instant.now());
            PersonDetails named = store.records().caseload().people("", "", 1, act).stream()
                    .map(row -> store.records()
                            .people()
                            .find(row.personId(), act)
                            .orElseThrow()
                            .details())
                    .findFirst()
                    .orElseThrow();
            String person = store.records().people().add(named, act).id();
            episode = store.records()
                    .charts()
                    .begin(person, slipway.mechanics.body.Side.LEFT, "x", java.util.Map.of(), act)
                    .episode()
                    .id();
        }
        Run run = Run.of(
                "export",
                episode,
                "unknown",
                "--data",
                data(),
                "--out",
                folder.resolve("o").toString());
        assertThat(run.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(run.err()).contains(episode + ": screening: is missing", "no episode unknown");
        assertThat(folder.resolve("o")).doesNotExist();
    }

    @Test
    void aBackupGoesBackWhereNoRecordsAreAndNowhereElse() throws IOException {
        importAll();
        Path key = Files.write(folder.resolve("key"), new byte[BackupKey.MIN_FILE]);
        Path file = folder.resolve("clinic.backup");
        Run made = Run.of("backup", file.toString(), "--data", data(), "--key-file", key.toString());
        assertThat(made.err()).isEmpty();
        assertThat(made.status()).isEqualTo(ExitStatus.OK);
        String digest = made.out().lines().reduce((first, last) -> last).orElseThrow();

        String[] back = {
            "restore", file.toString(), "--data", folder.resolve("back").toString(), "--key-file", key.toString()
        };
        Run restored = Run.of(back);
        assertThat(restored.err()).isEmpty();
        assertThat(restored.out()).endsWith(digest + System.lineSeparator());
        assertThat(Files.getPosixFilePermissions(folder.resolve("back/slipway.db")))
                .as("nobody but the owner reads what came back")
                .containsExactlyInAnyOrderElementsOf(PosixFilePermissions.fromString("rw-------"));
        Run again = Run.of(back);
        assertThat(again.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(again.err()).contains("holds records already; nothing was changed");
        assertThat(Run.of("audit", "verify", "--data", folder.resolve("back").toString())
                        .status())
                .isEqualTo(ExitStatus.OK);
    }

    @Test
    void aDamagedBackupHasAnExitStatusOfItsOwn() throws IOException {
        importAll();
        Path key = Files.write(folder.resolve("key"), new byte[BackupKey.MIN_FILE]);
        Path backups = Files.createDirectories(folder.resolve("backups"));
        Files.createFile(backups.resolve("slipway-20200101T000000Z.slipway-backup"));
        Files.createFile(backups.resolve("something else"));
        Run made = Run.of("backup", backups.toString(), "--data", data(), "--key-file", key.toString(), "--keep", "1");
        Path file = Path.of(made.out().lines().findFirst().orElseThrow());
        try (Stream<Path> left = Files.list(backups)) {
            assertThat(left).containsExactlyInAnyOrder(file, backups.resolve("something else"));
        }
        byte[] bytes = Files.readAllBytes(file);
        bytes[bytes.length / 2] ^= 1;
        Files.write(file, bytes);
        String back = folder.resolve("back").toString();
        Run restored = Run.of("restore", file.toString(), "--data", back, "--key-file", key.toString());
        assertThat(restored.status()).isEqualTo(ExitStatus.DAMAGE);
        assertThat(restored.err()).contains("damaged or cut off");
        assertThat(Path.of(back)).isEmptyDirectory();
    }

    @Test
    void aNameWithoutAnEndingIsAFolderAndIsMade() throws IOException {
        importAll();
        Path key = Files.write(folder.resolve("key"), new byte[BackupKey.MIN_FILE]);
        Path backups = folder.resolve("kept/backups");
        Run made = Run.of("backup", backups.toString(), "--data", data(), "--key-file", key.toString());
        assertThat(made.err()).isEmpty();
        assertThat(Path.of(made.out().lines().findFirst().orElseThrow())).hasParent(backups);
    }

    @Test
    void aBackupWithoutAKeyIsNotMade() throws IOException {
        importAll();
        Run run = Run.of("backup", folder.resolve("b").toString(), "--data", data());
        assertThat(run.status()).isEqualTo(ExitStatus.BAD_INPUT);
        assertThat(run.err()).contains("a backup needs a key");
    }
}
