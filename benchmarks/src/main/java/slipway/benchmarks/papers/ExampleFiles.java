package slipway.benchmarks.papers;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.CaseFiles;
import slipway.care.facts.EpisodeFacts;
import slipway.care.facts.EpisodeFiles;
import slipway.care.follow.CheckInFile;
import slipway.care.visit.Visit;
import slipway.care.visit.VisitPlan;
import slipway.reasoning.response.checkin.CheckIn;

/** An invented person's case, episode and reports. Read from the examples, so run from the root. */
final class ExampleFiles {
    private static final String NAME = "low-irritability-stiff";
    private static final OffsetDateTime FIRST = OffsetDateTime.parse("2026-04-07T07:30:00+02:00");
    private static final int HOURS_BETWEEN = 4;

    private ExampleFiles() {}

    static EpisodeFacts facts() {
        CaseFile file = CaseFiles.read(read(Path.of("examples", NAME + ".yaml")), NAME);
        return EpisodeFiles.read(read(Path.of("examples", "episodes", NAME + ".yaml")), NAME, file);
    }

    static VisitPlan plan(EpisodeFacts facts) {
        return Visit.plan(facts.file(), "benchmark");
    }

    /** Calm reports on the first exercise, each on the day after its session. */
    static List<CheckIn> reports(VisitPlan plan, int count) {
        String exercise = plan.given().get(0).range().candidate().id();
        var csv = new StringBuilder(String.join(",", CheckInFile.columns())).append('\n');
        for (int i = 0; i < count; i++) {
            OffsetDateTime at = FIRST.plusHours((long) i * HOURS_BETWEEN);
            csv.append(String.format(
                    Locale.ROOT,
                    "bench-%04d,session-%04d,%s,%s,1,10,%d,stretch,,,%d,same,no,no,no,,%s%n",
                    i,
                    i,
                    exercise,
                    at,
                    1 + i % 2,
                    1 + i % 3,
                    at.plusDays(1)));
        }
        return CheckInFile.read("reports", csv.toString().getBytes(StandardCharsets.UTF_8), List.of(exercise));
    }

    private static byte[] read(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
