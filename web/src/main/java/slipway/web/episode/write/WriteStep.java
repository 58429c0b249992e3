package slipway.web.episode.write;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import slipway.care.facts.ChartFacts;
import slipway.care.record.Role;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.assembly.Assembly;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.VisitRecord;
import slipway.care.record.content.Section;
import slipway.care.record.papers.Paper;
import slipway.documents.paper.PaperKind;
import slipway.documents.paper.Signed;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.reasoning.deadlines.Deadline;
import slipway.reasoning.deadlines.PaperRule;
import slipway.web.episode.Cases;
import slipway.web.episode.Desk;
import slipway.web.episode.Step;
import slipway.web.episode.StepPage;
import slipway.web.form.FormView;
import slipway.web.form.Option;
import slipway.web.shell.Times;

/** The papers of an episode, what can be written, what is due, and what papers need beside the case. */
@Component
class WriteStep implements StepPage {
    private static final Words WORDS = Words.beside(WriteStep.class, Language.EN);
    private static final List<String> SENT =
            List.of("plan", "certification", "recertification", "progress-report", "letter", "discharge");

    private final PaperDesk papers;
    private final Cases cases;
    private final Desk desk;

    WriteStep(PaperDesk papers, Cases cases, Desk desk) {
        this.papers = papers;
        this.cases = cases;
        this.desk = desk;
    }

    @Override
    public Step step() {
        return Step.WRITE;
    }

    @Override
    public Words words() {
        return WORDS;
    }

    @Override
    public void fill(Chart chart, FormView form, Model model) {
        Assembly assembly = cases.assemble(chart);
        Optional<Assembly.Complete> whole = assembly.complete();
        model.addAttribute("rows", rows(chart));
        model.addAttribute("kinds", whole.map(each -> kinds(chart, each)).orElse(List.of()));
        model.addAttribute("assembly", assembly);
        Optional<ChartFacts> facts = whole.map(each -> papers.facts(chart, each));
        model.addAttribute(
                "deadlines",
                facts.map(each -> each.facts().deadlines(cases.today())).orElse(List.<Deadline>of()));
        model.addAttribute("notRead", facts.map(ChartFacts::notRead).orElse(List.of()));
        model.addAttribute("visits", chart.visits().list());
        model.addAttribute("visitRows", visitRows(chart, form));
        List<String> codes = chart.section(Section.PAPERWORK)
                .content()
                .path("diagnoses")
                .valueStream()
                .map(code -> code.asString(""))
                .filter(code -> !code.isEmpty())
                .toList();
        model.addAttribute("codeProblems", papers.codeProblems(chart, codes, cases.today()));
        model.addAttribute("today", Times.day(cases.today()));
        model.addAttribute("payers", payers());
        model.addAttribute("sents", options("sent.", SENT));
    }

    private List<KindRow> kinds(Chart chart, Assembly.Complete whole) {
        return Arrays.stream(PaperKind.values())
                .map(kind -> KindRow.of(kind, papers.input(chart, whole, kind)))
                .toList();
    }

    private List<PaperRow> rows(Chart chart) {
        UnaryOperator<String> names = papers.names(chart);
        Map<String, Set<Role>> roles = desk
                .records()
                .staff()
                .list(chart.episode().clinicId())
                .stream()
                .collect(Collectors.toMap(StaffAccount::id, StaffAccount::roles));
        return chart.papers().list().stream()
                .map(paper -> PaperRow.of(paper, names, waits(paper, roles)))
                .toList();
    }

    private static boolean waits(Paper paper, Map<String, Set<Role>> roles) {
        return paper.signature()
                .filter(by -> Signing.waits(Signed.of(paper), roles.getOrDefault(by.by(), Set.of())))
                .isPresent();
    }

    private static List<VisitRow> visitRows(Chart chart, FormView form) {
        var numbers = new ArrayList<Integer>();
        for (int i = 0; i < form.size("paperwork.visits"); i++) {
            String number = form.value("paperwork.visits[%d].number".formatted(i));
            numbers.add(number.matches("\\d{1,3}") ? Integer.parseInt(number) : 0);
        }
        chart.visits().list().stream()
                .map(VisitRecord::number)
                .filter(number -> !numbers.contains(number))
                .forEach(numbers::add);
        var rows = new ArrayList<VisitRow>();
        for (int i = 0; i < numbers.size(); i++) {
            rows.add(new VisitRow(i, numbers.get(i)));
        }
        rows.sort(Comparator.comparingInt(VisitRow::number).reversed());
        return rows;
    }

    private static List<Option> payers() {
        return options(
                "payer.",
                PaperRule.bundled().stream().map(PaperRule::payer).distinct().toList());
    }

    private static List<Option> options(String prefix, List<String> keys) {
        return keys.stream()
                .map(key -> new Option(key, WORDS.get(prefix + key)))
                .toList();
    }
}
