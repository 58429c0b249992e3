package slipway.web.episode.write;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import slipway.care.facts.ChartFacts;
import slipway.care.facts.Frame;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.assembly.Assembly;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.PlanState;
import slipway.care.record.papers.Paper;
import slipway.care.visit.VisitPlan;
import slipway.documents.paper.PaperFrame;
import slipway.documents.paper.PaperInput;
import slipway.documents.paper.PaperJson;
import slipway.documents.paper.PaperKind;
import slipway.documents.paper.PaperPrinter;
import slipway.documents.paper.PaperText;
import slipway.documents.paper.Signed;
import slipway.documents.pdf.PdfEngine;
import slipway.reasoning.billing.UnitRule;
import slipway.reasoning.codes.CodeProblem;
import slipway.reasoning.codes.DiagnosisCodes;
import slipway.reasoning.response.propose.Followed;
import slipway.web.episode.Cases;
import slipway.web.episode.CodeBook;
import slipway.web.episode.Desk;
import slipway.web.episode.home.HomeCourse;

/** What papers are put together from, and how they are printed. */
@Component
class PaperDesk {
    /** Setting of the clinic: how minutes become units; {@code none} counts no units. */
    private static final String UNIT_RULE = "unitRule";

    private final Desk desk;
    private final Cases cases;
    private final HomeCourse home;
    private final CodeBook book;
    private final PaperPrinter printer = new PaperPrinter(new PdfEngine());

    PaperDesk(Desk desk, Cases cases, HomeCourse home, CodeBook book) {
        this.book = book;
        this.desk = desk;
        this.cases = cases;
        this.home = home;
    }

    /** The facts of a chart with a whole case. */
    ChartFacts facts(Chart chart, Assembly.Complete whole) {
        UnaryOperator<String> names = names(chart);
        var therapist = new Frame.Therapist(names.apply(chart.episode().therapistId()), Optional.empty());
        return ChartFacts.of(chart, whole.file(), Optional.of(therapist), names, ZoneId.systemDefault());
    }

    /** What a paper of today is put together from. */
    PaperInput input(Chart chart, Assembly.Complete whole, PaperKind kind) {
        ChartFacts known = facts(chart, whole);
        VisitPlan now = cases.visit(whole);
        Optional<HomeCourse.Home> given = home.home(chart);
        Optional<Followed> followed = given.filter(
                        each -> !now.stopped() && !chart.checkIns().list().isEmpty())
                .map(each -> home.followed(chart, each));
        return new PaperInput(
                known.facts(),
                plan(chart, now, given, kind),
                cases.today(),
                known.facts().course(cases.today()),
                followed,
                unitRule(chart),
                codes(chart));
    }

    /** What was given; for papers that plan ahead also what the therapist has accepted and not yet tried. */
    private VisitPlan plan(Chart chart, VisitPlan now, Optional<HomeCourse.Home> given, PaperKind kind) {
        if (given.isPresent()) {
            return now.giving(home.visit(given.get()));
        }
        boolean plansAhead = kind == PaperKind.EVALUATION || kind == PaperKind.PLAN_OF_CARE;
        return chart.plans()
                .newest()
                .filter(plan -> plansAhead && plan.state() == PlanState.ACCEPTED)
                .map(plan -> now.giving(home.visit(plan)))
                .orElseGet(now::withoutExercises);
    }

    private DiagnosisCodes codes(Chart chart) {
        return book.of(chart.episode().clinicId());
    }

    /** What is wrong with diagnosis codes of an episode on a day. */
    List<CodeProblem> codeProblems(Chart chart, List<String> given, LocalDate day) {
        return codes(chart).check(given, day, Optional.of(chart.episode().side()));
    }

    private Optional<UnitRule> unitRule(Chart chart) {
        String set = desk.records()
                .clinics()
                .setting(chart.episode().clinicId(), UNIT_RULE, "none")
                .value();
        return UnitRule.find(set);
    }

    /** Names of the staff of the clinic by id; an id that is none stays. */
    UnaryOperator<String> names(Chart chart) {
        Map<String, String> names = desk.records().staff().list(chart.episode().clinicId()).stream()
                .collect(Collectors.toMap(StaffAccount::id, StaffAccount::displayName));
        return id -> names.getOrDefault(id, id);
    }

    /** The paper as PDF: a signed one with what was signed, a draft with the record of now. */
    byte[] pdf(Chart chart, Paper paper) {
        PaperText text = PaperJson.read(paper.text());
        PaperFrame frame = PaperJson.frame(paper.text())
                .filter(kept -> paper.signature().isPresent())
                .orElseGet(() -> frame(chart, text.kind()));
        Signed signed = Signed.of(paper).named(names(chart));
        return printer.print(text, frame.standing(signed), slipway.documents.pdf.Paper.A4)
                .pdf();
    }

    /** What stands around a paper of this kind now; nothing but names if the case is not whole any more. */
    PaperFrame frame(Chart chart, PaperKind kind) {
        Optional<Assembly.Complete> whole = cases.assemble(chart).complete();
        if (whole.isPresent()) {
            return PaperFrame.of(kind, input(chart, whole.get(), kind));
        }
        return new PaperFrame(
                chart.person().details().name(),
                Optional.empty(),
                cases.clinic(chart).name(),
                names(chart).apply(chart.episode().therapistId()),
                "",
                chart.person().details().invented(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
