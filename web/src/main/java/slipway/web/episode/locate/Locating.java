package slipway.web.episode.locate;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.springframework.stereotype.Component;
import slipway.care.casefile.CaseParts;
import slipway.care.kept.KeptAnswers;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.ResultKind;
import slipway.care.record.chart.Stamp;
import slipway.care.visit.SiteChoice;
import slipway.mechanics.body.Side;
import slipway.reasoning.ReasoningData;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.irritability.IrritabilityFindings;
import slipway.reasoning.irritability.IrritabilityRule;
import slipway.reasoning.locate.ExamLimits;
import slipway.reasoning.locate.LocateRequest;
import slipway.reasoning.locate.Location;
import slipway.reasoning.locate.NextTests;
import slipway.reasoning.screening.Level;
import slipway.reasoning.screening.Region;
import slipway.reasoning.screening.Screening;
import slipway.reasoning.screening.ScreeningResult;
import slipway.reasoning.screening.ScreeningRules;
import slipway.web.episode.Cases;
import slipway.web.shell.Pages;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Locates from what is recorded so far. The same findings are located once and kept for a while. */
@Component
public class Locating {
    private static final int KEPT = 64;

    /** Digest of the tables by which findings weigh. */
    private static final String DATA_DIGEST = Cases.digest(String.join(
            "\n",
            List.of(
                            "coefficients",
                            "latent-tests",
                            "pain",
                            "patterns",
                            "priors",
                            "severities",
                            "sites",
                            "targets",
                            "tests")
                    .stream()
                    .map(table -> ReasoningData.text("locate/" + table + ".csv"))
                    .toList()));

    private final Cases cases;
    private final KeptAnswers<LocateRequest, Location> located = new KeptAnswers<>(KEPT);

    Locating(Cases cases) {
        this.cases = cases;
    }

    /** The findings of both sides as they are recorded. */
    public List<Finding> findings(Chart chart) {
        return CaseParts.findings(cases.tree(chart));
    }

    /** Where the findings of a chart point to; empty while there are none. */
    public Optional<Location> locate(Chart chart) {
        return locate(findings(chart), chart.episode().side());
    }

    /** Where findings point to; empty if there are none. */
    Optional<Location> locate(List<Finding> findings, Side side) {
        if (findings.isEmpty()) {
            return Optional.empty();
        }
        var request = new LocateRequest(findings, EnumSet.of(side));
        return Optional.of(located.get(request, () -> SiteChoice.locator().locate(request)));
    }

    /** Keeps what the findings of a chart point to, with what it was computed from; nothing while there are none. */
    public void keep(Chart chart) {
        locate(chart)
                .ifPresent(location -> chart.results()
                        .add(
                                ResultKind.SITES,
                                cases.inputs(chart, input(chart)),
                                new Stamp(Pages.version(), DATA_DIGEST),
                                KeptSites.body(location)));
    }

    /** What is located from, as one text. */
    String input(Chart chart) {
        return chart.episode().side() + ": "
                + String.join("; ", findings(chart).stream().map(Finding::text).toList());
    }

    /** What would tell most next, at most so many, within the hard stops. */
    public NextTests.Advice advice(Chart chart, int most) {
        List<Finding> findings = findings(chart);
        var request = new LocateRequest(findings, EnumSet.of(chart.episode().side()));
        return new NextTests(SiteChoice.locator()).advise(request, limits(chart, findings), most);
    }

    private ExamLimits limits(Chart chart, List<Finding> findings) {
        ScreeningResult screening = Screening.load().evaluate(cases.screeningInput(chart));
        boolean answered = ScreeningRules.load().listRequired(Region.LEG).stream()
                .filter(rule -> rule.level() == Level.EMERGENCY)
                .noneMatch(rule -> screening.notAsked().contains(rule.id()));
        List<String> standing = screening.listStanding().stream()
                .map(match -> match.rule().id())
                .toList();
        int provocation = (int) findings.stream()
                .filter(finding -> finding.kind() == FindingKind.PROVOCATION)
                .count();
        boolean protectedJoint = standing.contains("jointReplacement")
                || standing.contains("recentSurgery")
                || standing.contains("fractureSuspected");
        return new ExamLimits(
                answered && screening.level() != Level.EMERGENCY,
                irritable(cases.tree(chart)),
                provocation,
                protectedJoint,
                Set.of());
    }

    /** Whether what is recorded so far makes the person highly irritable. */
    private static boolean irritable(ObjectNode tree) {
        JsonNode told = tree.path("irritability");
        boolean trivial = told.path("provokedByTrivialActivity").asString("").equals("yes");
        var findings = new IrritabilityFindings(
                number(told, "restPain"),
                number(told, "nightPain"),
                number(told, "worstPain"),
                trivial ? number(told, "settleMinutes") : OptionalDouble.empty(),
                number(told, "settleMinutes"),
                OptionalDouble.empty(),
                told.path("onlyAtEndRange").asString("").equals("yes"),
                judgement(told.path("judgement").asString("")));
        return IrritabilityRule.judge(findings).level() == Irritability.HIGH;
    }

    private static Optional<Irritability> judgement(String word) {
        return java.util.Arrays.stream(Irritability.values())
                .filter(level -> level.key().equals(word))
                .findFirst();
    }

    private static OptionalDouble number(JsonNode told, String field) {
        JsonNode value = told.path(field);
        return value.isNumber() ? OptionalDouble.of(value.asDouble()) : OptionalDouble.empty();
    }
}
