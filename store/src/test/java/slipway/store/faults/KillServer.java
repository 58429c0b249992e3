package slipway.store.faults;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A PostgreSQL server that writes to the disk as one in use would, and that can be killed and started again. */
final class KillServer {
    private final Path folder;
    private final EmbeddedPostgres first;

    KillServer(Path folder) throws IOException {
        this.folder = folder;
        this.first = EmbeddedPostgres.builder()
                .setDataDirectory(folder.resolve("data"))
                .setOverrideWorkingDirectory(folder.toFile())
                .setServerConfig("fsync", "on")
                .setServerConfig("full_page_writes", "on")
                .setServerConfig("synchronous_commit", "on")
                .start();
    }

    String url(String database) {
        return "jdbc:postgresql://localhost:%d/%s".formatted(first.getPort(), database);
    }

    /** Kills every process of the server at once, then starts it again on what is on the disk. */
    void killAndStart() throws IOException, InterruptedException {
        kill();
        start();
    }

    /** Starts it on what is on the disk; it must not run. */
    void start() throws IOException, InterruptedException {
        // By hand: the library takes a folder once only. As root the server starts in a user namespace of its own.
        var command = new ArrayList<String>();
        if (System.getProperty("user.name").equals("root")) {
            command.addAll(List.of("unshare", "-U"));
        }
        command.addAll(List.of(
                program().toString(),
                "-D",
                folder.resolve("data").toString(),
                "-h",
                "localhost",
                "-p",
                Integer.toString(first.getPort()),
                "-k",
                folder.resolve("data").toAbsolutePath().toString()));
        Process server = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("server.log").toFile())
                .start();
        while (!answers()) {
            if (server.waitFor(20, TimeUnit.MILLISECONDS)) {
                throw new IllegalStateException("the server does not start: see " + folder.resolve("server.log"));
            }
        }
    }

    private void kill() throws IOException {
        Path file = folder.resolve("data/postmaster.pid");
        long pid = Long.parseLong(Files.readAllLines(file).get(0).strip());
        ProcessHandle postmaster = ProcessHandle.of(pid).orElseThrow();
        List<ProcessHandle> all =
                Stream.concat(Stream.of(postmaster), postmaster.descendants()).toList();
        all.forEach(ProcessHandle::destroyForcibly);
        all.forEach(process -> process.onExit().join());
    }

    private Path program() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.endsWith(Path.of("bin", "postgres")))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private boolean answers() {
        try (Connection connection = DriverManager.getConnection(url("postgres"), "postgres", "x")) {
            return connection.isValid(1);
        } catch (SQLException e) {
            return false;
        }
    }

    void close() throws IOException {
        kill();
        first.close();
    }
}
