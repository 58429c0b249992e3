package slipway.benchmarks.load;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The process of the server, with the processor time and memory that the system says it has used. */
final class Measured implements AutoCloseable {
    private static final double TICKS_PER_SECOND = 100;
    private static final int KIB_PER_MIB = 1024;

    private final Process process;
    final String address;

    Measured(Places place, String heap) throws IOException {
        var builder = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + heap,
                "-XX:+UseSerialGC",
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                LoadServer.class.getName(),
                place.settings().url(),
                place.settings().user(),
                place.folder().toString());
        builder.environment().put("BENCH_PASSWORD", place.settings().password());
        builder.redirectError(place.folder().resolve("server.log").toFile());
        process = builder.start();
        // A measurement that is stopped must not leave its server behind.
        Runtime.getRuntime().addShutdownHook(new Thread(process::destroy));
        var out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        String line = out.readLine();
        if (line == null || !line.startsWith("port ")) {
            throw new IOException(
                    "the server did not start: see " + place.folder().resolve("server.log"));
        }
        address = "http://127.0.0.1:" + line.substring("port ".length());
    }

    /** Processor time so far, of all its threads. */
    double processorSeconds() throws IOException {
        String stat = Files.readString(Path.of("/proc/" + process.pid() + "/stat"));
        String[] fields = stat.substring(stat.lastIndexOf(')') + 2).split(" ", -1);
        return (Long.parseLong(fields[11]) + Long.parseLong(fields[12])) / TICKS_PER_SECOND;
    }

    /** Memory that lies in the machine now. */
    long residentMib() throws IOException {
        return mib("VmRSS:");
    }

    /** The most that ever did. */
    long peakMib() throws IOException {
        return mib("VmHWM:");
    }

    private long mib(String key) throws IOException {
        List<String> lines = Files.readAllLines(Path.of("/proc/" + process.pid() + "/status"));
        return lines.stream()
                .filter(line -> line.startsWith(key))
                .mapToLong(line -> Long.parseLong(line.replaceAll("[^0-9]", "")) / KIB_PER_MIB)
                .findFirst()
                .orElse(0);
    }

    @Override
    public void close() {
        process.destroy();
        try {
            process.waitFor();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
