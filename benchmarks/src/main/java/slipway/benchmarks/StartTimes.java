package slipway.benchmarks;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/**
 * How long the program takes to start and how much memory it then holds; printed as a Markdown table. The arguments are
 * the command that starts it. Processor time and memory are read from {@code /proc}, so only on Linux. Run from the root.
 */
public final class StartTimes {
    private static final int ROUNDS = 5;
    /** Ticks of processor time a second in {@code /proc}, on every Linux that Java runs on. */
    private static final double TICKS = 100;

    private StartTimes() {}

    private record Sample(double seconds, double processorSeconds, double memoryMb) {}

    /** Prints the table. */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path records = Files.createTempDirectory("slipway-start");
        System.out.println("| started | seconds | processor seconds | memory, MB |");
        System.out.println("| --- | --- | --- | --- |");
        print("`--version`, until it ends", args, false, "--version");
        print("`plan` of an example, until it ends", args, false, "plan", "examples/low-irritability-stiff.yaml");
        print("`serve`, until it answers", args, true, "serve", "--port", "0", "--data", records.toString());
    }

    private static void print(String what, String[] start, boolean untilItAnswers, String... words)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(Arrays.asList(start));
        command.addAll(Arrays.asList(words));
        var samples = new ArrayList<Sample>();
        // The first one only warms the caches of the system.
        for (int round = -1; round < ROUNDS; round++) {
            Sample sample = run(command, untilItAnswers);
            if (round >= 0) {
                samples.add(sample);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "| %s | %.1f | %.1f | %.0f |%n",
                what,
                median(samples.stream().mapToDouble(Sample::seconds).toArray()),
                median(samples.stream().mapToDouble(Sample::processorSeconds).toArray()),
                median(samples.stream().mapToDouble(Sample::memoryMb).toArray()));
    }

    private static Sample run(List<String> command, boolean untilItAnswers) throws IOException, InterruptedException {
        long start = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .redirectOutput(untilItAnswers ? ProcessBuilder.Redirect.PIPE : ProcessBuilder.Redirect.DISCARD)
                .start();
        Path files = Path.of("/proc", Long.toString(process.pid()));
        Sample last = new Sample(0, 0, 0);
        if (untilItAnswers) {
            waitForAddress(process);
            last = sample(files, start, last);
            process.destroy();
            process.waitFor();
            return last;
        }
        // The last look before the end misses a few milliseconds of processor time.
        do {
            last = sample(files, start, last);
        } while (!process.waitFor(5, TimeUnit.MILLISECONDS));
        if (process.waitFor() != 0) {
            throw new IOException(command + " ended with " + process.exitValue());
        }
        return new Sample((System.nanoTime() - start) / 1e9, last.processorSeconds(), last.memoryMb());
    }

    private static void waitForAddress(Process process) throws IOException {
        var out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            if (line.contains("http://")) {
                return;
            }
        }
        throw new IOException("the server ended before it answered");
    }

    private static Sample sample(Path files, long start, Sample before) {
        try {
            String stat = Files.readString(files.resolve("stat"));
            String[] fields = stat.substring(stat.lastIndexOf(')') + 2).split(" ", -1);
            double processor = (Long.parseLong(fields[11]) + Long.parseLong(fields[12])) / TICKS;
            double memoryKb = Files.readAllLines(files.resolve("status")).stream()
                    .filter(line -> line.startsWith("VmHWM:"))
                    .mapToDouble(line -> Double.parseDouble(line.replaceAll("[^0-9]", "")))
                    .findFirst()
                    .orElse(before.memoryMb() * 1024);
            return new Sample((System.nanoTime() - start) / 1e9, processor, memoryKb / 1024);
        } catch (IOException ended) {
            return before;
        }
    }

    private static double median(double[] values) {
        Arrays.sort(values);
        return values[values.length / 2];
    }
}
