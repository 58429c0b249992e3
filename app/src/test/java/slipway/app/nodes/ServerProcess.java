package slipway.app.nodes;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** {@code slipway serve} as a process of its own. */
final class ServerProcess implements AutoCloseable {
    private static final Pattern ADDRESS = Pattern.compile("Slipway is at (http://localhost:\\d+)");

    private final Path log;
    private final Process process;
    private String address = "";

    ServerProcess(Path folder, String name, String program, String database, boolean backups) throws IOException {
        log = folder.resolve(name + ".log");
        var command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx300m",
                "-XX:+UseSerialGC",
                "-cp",
                program,
                "slipway.app.Main",
                "serve",
                "--data",
                folder.resolve(name).toString(),
                "--port",
                "0",
                "--database",
                database));
        if (backups) {
            command.addAll(List.of(
                    "--backup",
                    folder.resolve("backups").toString(),
                    "--backup-key",
                    folder.resolve("backup.key").toString()));
        }
        var builder = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile());
        builder.environment().put("SLIPWAY_DATABASE_USER", "postgres");
        builder.environment().put("SLIPWAY_DATABASE_PASSWORD", "postgres");
        process = builder.start();
    }

    /** Waits until it says where it is. */
    void awaitReady() throws IOException, InterruptedException {
        Optional<String> found = Optional.empty();
        while (found.isEmpty()) {
            if (process.waitFor(100, TimeUnit.MILLISECONDS)) {
                throw new IllegalStateException("the server ended: see " + log);
            }
            Matcher matcher = ADDRESS.matcher(Files.readString(log));
            found = matcher.find() ? Optional.of(matcher.group(1)) : Optional.empty();
        }
        address = found.get();
    }

    String address() {
        return address;
    }

    /** With SIGKILL: it gets no chance to say or write anything. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
