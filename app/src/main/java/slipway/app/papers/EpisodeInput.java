package slipway.app.papers;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slipway.app.Version;
import slipway.app.console.InputFiles;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.CaseFiles;
import slipway.care.facts.EpisodeFacts;
import slipway.care.facts.EpisodeFiles;
import slipway.care.facts.Frame;
import slipway.care.follow.CheckInFile;
import slipway.care.visit.Visit;
import slipway.care.visit.VisitPlan;

/** What the commands have in common that work on a whole episode: its files. */
public final class EpisodeInput {
    @Parameters(paramLabel = "CASE.yaml", description = "Case file; 'slipway schema case' describes it.")
    private Path file = Path.of("");

    @Option(
            names = "--episode",
            paramLabel = "EPISODE.yaml",
            description = "Visits, scores, goals; 'slipway schema episode' describes it.")
    private @Nullable Path episode;

    @Option(
            names = "--checkins",
            paramLabel = "CHECKINS.csv",
            description = "What was reported from home, as for 'slipway respond'.")
    private @Nullable Path checkIns;

    /** An episode and the plan of its case. */
    public record Known(EpisodeFacts facts, VisitPlan plan) {}

    /** The facts of a case and of its episode file, if there is one. */
    public static EpisodeFacts facts(Path file, @Nullable Path episode) {
        CaseFile caseFile = CaseFiles.read(InputFiles.read(file), file.toString());
        return episode == null
                ? new EpisodeFacts(
                        caseFile,
                        Frame.UNKNOWN,
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        EpisodeFacts.Ending.UNKNOWN)
                : EpisodeFiles.read(InputFiles.read(episode), episode.toString(), caseFile);
    }

    /** Reads the files; nothing is taken if one of them has a mistake. */
    public Known read() {
        EpisodeFacts facts = facts(file, episode);
        VisitPlan plan = Visit.plan(facts.file(), Version.NUMBER);
        if (checkIns == null) {
            return new Known(facts, plan);
        }
        List<String> given = plan.given().stream()
                .map(dosed -> dosed.range().candidate().id())
                .toList();
        return new Known(
                facts.withCheckIns(CheckInFile.read(checkIns.toString(), InputFiles.read(checkIns), given)), plan);
    }
}
