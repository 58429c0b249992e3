package slipway.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import slipway.care.casefile.CaseFiles;
import slipway.care.facts.EpisodeFacts;
import slipway.care.facts.EpisodeFiles;
import slipway.care.facts.Frame;
import slipway.care.follow.CheckInFile;
import slipway.care.visit.Visit;
import slipway.care.visit.VisitPlan;

/** The invented episode of the examples. */
public final class SampleEpisodes {
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final VisitPlan PLAN =
            Visit.plan(CaseFiles.read(bytes("low-irritability-stiff.yaml"), "case"), "test");

    private SampleEpisodes() {}

    public static VisitPlan plan() {
        return PLAN;
    }

    /** With visits, scores, goals and reports. */
    public static EpisodeFacts full() {
        List<String> given = PLAN.given().stream()
                .map(dosed -> dosed.range().candidate().id())
                .toList();
        return EpisodeFiles.read(bytes("episodes/low-irritability-stiff.yaml"), "episode", PLAN.file())
                .withCheckIns(
                        CheckInFile.read("reports", bytes("episodes/low-irritability-stiff-checkins.csv"), given));
    }

    /** The case alone. */
    public static EpisodeFacts bare() {
        return new EpisodeFacts(
                PLAN.file(), Frame.UNKNOWN, List.of(), List.of(), List.of(), List.of(), EpisodeFacts.Ending.UNKNOWN);
    }

    private static byte[] bytes(String name) {
        try {
            return Files.readAllBytes(EXAMPLES.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
