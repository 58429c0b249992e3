package slipway.store.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * Kills a writing process again and again. Results are lines of a CSV file; started again, it goes on where the file
 * ends.
 */
final class KillRounds {
    private static final String HEADER = "finished_at,database,round,task,killed_after_ms,server_killed,confirmed,lost,"
            + "wrong,integrity,trail_breaks,tables_version\n";
    /** A database is written to in so many rounds before a new one is made, so that looking stays quick. */
    private static final int ROUNDS_PER_DATABASE = 20;

    private KillRounds() {}

    /** Arguments: sqlite or postgres, how many rounds in all, file of the results, folder to work in, perhaps one task. */
    public static void main(String[] args) throws Exception {
        boolean sqlite = args[0].equals("sqlite");
        int rounds = Integer.parseInt(args[1]);
        Path results = Path.of(args[2]);
        Path folder = Path.of(args[3]).resolve(args[0]);
        Optional<KillTask> only = args.length > 4 ? Optional.of(KillTask.valueOf(args[4])) : Optional.empty();
        if (!Files.exists(results)) {
            Files.writeString(results, HEADER);
        }
        int first = done(results, args[0]) + 1;
        boolean whole = true;
        try (KillTarget target = sqlite ? KillTarget.sqlite(folder) : KillTarget.postgres(folder)) {
            for (int round = first; round <= rounds; round++) {
                var random = new Random(round * 31L + (sqlite ? 1 : 2));
                if (round == first || round % ROUNDS_PER_DATABASE == 1) {
                    target.fresh(round);
                }
                KillRound.Result result =
                        new KillRound(target, round, random, only.orElseGet(() -> KillTask.random(random))).run();
                whole &= result.isWhole();
                append(results, "%s,%s,%d,%s%n".formatted(Instant.now(), args[0], round, result.csv()));
            }
        }
        System.exit(whole ? 0 : 1);
    }

    private static int done(Path results, String database) throws IOException {
        List<String> lines = Files.readAllLines(results);
        return (int) lines.stream()
                .filter(line -> line.contains("," + database + ","))
                .count();
    }

    private static void append(Path results, String line) throws IOException {
        Files.writeString(results, line, StandardOpenOption.APPEND);
    }
}
