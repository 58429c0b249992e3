package slipway.documents.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.CaseFiles;
import slipway.care.facts.EpisodeFacts;
import slipway.care.facts.EpisodeFiles;
import slipway.care.facts.Frame;
import slipway.care.follow.CheckInFile;
import slipway.care.visit.Visit;
import slipway.care.visit.VisitPlan;
import slipway.reasoning.billing.UnitRule;

/** Invented episodes: a full one, and one of which nothing but the case is known. */
final class SamplePapers {
    static final LocalDate DAY = LocalDate.of(2026, 5, 5);
    private static final Path EXAMPLES = Path.of("..", "examples");
    private static final VisitPlan STIFF = plan("low-irritability-stiff");

    private SamplePapers() {}

    static PaperInput full() {
        return full(text -> text);
    }

    /** The same, but the last report tells of new weakness. */
    static PaperInput withNewWeakness() {
        return full(text -> {
            String told = text.strip();
            int last = told.lastIndexOf('\n');
            return told.substring(0, last) + told.substring(last).replace(",no,no,no,", ",no,yes,no,") + "\n";
        });
    }

    private static PaperInput full(UnaryOperator<String> reports) {
        EpisodeFacts facts = EpisodeFiles.read(bytes("episodes/low-irritability-stiff.yaml"), "episode", STIFF.file());
        List<String> given = STIFF.given().stream()
                .map(dosed -> dosed.range().candidate().id())
                .toList();
        String csv = reports.apply(
                new String(bytes("episodes/low-irritability-stiff-checkins.csv"), StandardCharsets.UTF_8));
        var checkIns = CheckInFile.read("reports", csv.getBytes(StandardCharsets.UTF_8), given);
        return PaperInput.of(facts.withCheckIns(checkIns), STIFF, DAY, Optional.of(UnitRule.EIGHT_MINUTE));
    }

    static PaperInput bare(String caseId) {
        VisitPlan plan = plan(caseId);
        return PaperInput.of(bare(plan.file()), plan, DAY, Optional.empty());
    }

    private static EpisodeFacts bare(CaseFile file) {
        return new EpisodeFacts(
                file, Frame.UNKNOWN, List.of(), List.of(), List.of(), List.of(), EpisodeFacts.Ending.UNKNOWN);
    }

    private static VisitPlan plan(String caseId) {
        return Visit.plan(CaseFiles.read(bytes(caseId + ".yaml"), caseId), "test");
    }

    private static byte[] bytes(String name) {
        try {
            return Files.readAllBytes(EXAMPLES.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
