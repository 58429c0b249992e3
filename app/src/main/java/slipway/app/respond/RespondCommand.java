package slipway.app.respond;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.app.Version;
import slipway.app.console.DateOption;
import slipway.app.console.ExitStatus;
import slipway.app.console.InputFiles;
import slipway.care.casefile.CaseFiles;
import slipway.care.follow.CheckInFile;
import slipway.care.follow.Follow;
import slipway.care.follow.FollowPlans;
import slipway.care.visit.Visit;
import slipway.care.visit.VisitPlan;
import slipway.reasoning.response.propose.Followed;
import slipway.reasoning.response.propose.FollowedExercise;
import slipway.reasoning.response.propose.RespondResult;
import tools.jackson.databind.json.JsonMapper;

/** {@code slipway respond}: check-ins in, an answer for each out. */
@Command(
        name = "respond",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Answers what a person reported between visits: stop and send on, pause, do less, hold, or do more, for each"
                    + " check-in one decision with its reasons, never beyond the ceiling that the therapist set.",
            "",
            "Prints one JSON object a line, in the order in which the check-ins were received. CHECKINS.csv must have"
                    + " exactly the columns checkin_id,session_id,exercise,started_at,before,repetitions_done,worst,kind,"
                    + "usual_pain,reach,settle_minutes,next_morning,still_numb,new_weakness,emergency,flare_exercise,"
                    + "reported_at. Either all of it is used or nothing: every mistake is named with line and column.",
            "",
            "What was reported is not what was seen. The therapist decides. An emergency is answered at once by the"
                    + " local emergency number, not by this program."
        })
public final class RespondCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "CASE.yaml", description = "Case file; its plan is what was given.")
    private Path caseFile = Path.of("");

    @Parameters(index = "1", paramLabel = "CHECKINS.csv", description = "What was reported.")
    private Path checkInFile = Path.of("");

    @ArgGroup
    private Form form = new Form();

    @Option(
            names = "--as-of",
            converter = DateOption.class,
            paramLabel = "YYYY-MM-DD",
            description = "Leave out what was received after this day; default all.")
    private @Nullable LocalDate asOf;

    /** How it is printed. */
    static final class Form {
        @Option(names = "--json", description = "One JSON object for each check-in (the default).")
        private boolean json;

        @Option(names = "--text", description = "Sentences instead of JSON.")
        private boolean text;

        boolean sentences() {
            return text && !json;
        }
    }

    @Override
    public Integer call() {
        var file = CaseFiles.read(InputFiles.read(caseFile), caseFile.toString());
        VisitPlan visit = Visit.plan(file, Version.NUMBER);
        if (visit.stopped()) {
            spec.commandLine()
                    .getErr()
                    .println(
                            caseFile + ": the screening stops the plan ('slipway screen' says why); nothing was given");
            return ExitStatus.NO_PLAN;
        }
        List<String> given = FollowPlans.of(visit).exercises().stream()
                .map(FollowedExercise::id)
                .toList();
        var checkIns = CheckInFile.read(checkInFile.toString(), InputFiles.read(checkInFile), given);
        print(Follow.of(visit, checkIns, List.of(), Optional.ofNullable(asOf)));
        return ExitStatus.OK;
    }

    private void print(Followed followed) {
        PrintWriter out = spec.commandLine().getOut();
        var json = JsonMapper.shared();
        for (RespondResult result : followed.results()) {
            out.println(form.sentences() ? RespondText.of(result) : json.writeValueAsString(result));
        }
        out.flush();
    }
}
