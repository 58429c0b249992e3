package slipway.documents.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import slipway.care.casefile.IrritabilityReport;
import slipway.care.casefile.RemoteMovement;
import slipway.care.casefile.TestEntry;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.measures.Numbers;
import slipway.reasoning.plan.SiteShare;
import slipway.reasoning.screening.Match;
import slipway.reasoning.screening.ScreeningResult;
import slipway.reasoning.tolerance.SiteTolerance;

/** What was asked and examined, and what the therapist and the program make of it. */
final class ExaminationParts {
    private final Writing out;
    private final PaperInput in;

    ExaminationParts(Writing out, PaperInput in) {
        this.out = out;
        this.in = in;
    }

    /** Every rule that matched, who cleared it, and what was not asked. */
    void screening() {
        out.part("screening");
        ScreeningResult result = in.plan().screening();
        if (result.matched().isEmpty()) {
            out.say("clear", out.words().get("screening.clear", result.level().key()), "case/screening");
        }
        for (Match match : result.matched()) {
            String source = "case/screening/" + match.rule().id();
            String text =
                    out.words().get("screening.match", match.rule().words().tellEn(), told(match));
            out.say(match.rule().id(), text, source);
            match.clearance()
                    .ifPresent(cleared -> out.say(
                            match.rule().id() + "-cleared",
                            out.words().get("screening.cleared", cleared.who(), cleared.when(), cleared.outcome()),
                            "case/clearances"));
        }
        if (!result.notAsked().isEmpty()) {
            out.say("open", out.words().get("screening.open", String.join(", ", result.notAsked())), "case/screening");
        }
        out.fixed("screening.limits");
    }

    /** Where a finding stands in a file helps its writer, not the reader of a paper. */
    private static String told(Match match) {
        return match.because().replaceAll(" ?\\(line \\d+\\)", "");
    }

    void irritability() {
        out.part("irritability");
        IrritabilityReport report = in.facts().file().examination().irritability();
        number("worst", "irritability.worst", report.worstPain(), "worstPain");
        number("usual", "irritability.usual", report.usualPain(), "usualPain");
        number("night", "irritability.night", report.nightPain(), "nightPain");
        number("settle", "irritability.settle", report.settleMinutes(), "settleMinutes");
        out.told("judgement", "irritability.judgement", report.judgement(), "case/irritability/judgement");
        in.plan()
                .result()
                .ifPresent(result -> out.say(
                        "level",
                        out.words()
                                .get(
                                        "irritability.level",
                                        result.plan().irritability().level().key()),
                        "case/irritability",
                        "plan/irritability"));
    }

    private void number(String id, String labelKey, OptionalDouble value, String key) {
        Optional<String> text = value.isPresent() ? Optional.of(Numbers.text(value.getAsDouble())) : Optional.empty();
        out.told(id, labelKey, text, "case/irritability/" + key);
    }

    /** Neural tests with angles and what a movement far away did. */
    void tests() {
        out.part("tests");
        List<TestEntry> tests = in.facts().file().examination().tests();
        if (tests.isEmpty()) {
            out.blank("none", "label.tests", "case/tests");
        }
        for (int i = 0; i < tests.size(); i++) {
            out.say("test-" + (i + 1), text(tests.get(i)), "case/tests/" + i);
        }
    }

    private String text(TestEntry test) {
        String what = test.text().replace('-', ' ');
        String angle = Numbers.text(test.reachedDeg());
        var text = new StringBuilder(
                test.changed()
                        ? out.words()
                                .get(
                                        "tests.changed",
                                        what,
                                        angle,
                                        test.felt()
                                                .map(this::felt)
                                                .orElse(out.words().get("tests.unnamed")))
                        : out.words().get("tests.unchanged", what, angle));
        for (RemoteMovement far : test.remoteMovements()) {
            text.append(' ')
                    .append(out.words()
                            .get(
                                    "tests.far." + far.change().name().toLowerCase(Locale.ROOT),
                                    far.joint().key(),
                                    Numbers.text(far.fromDeg()),
                                    Numbers.text(far.toDeg())));
        }
        return text.toString();
    }

    private String felt(TestEntry.Felt felt) {
        return out.words().get(felt.familiar() ? "tests.familiar" : "tests.other", felt.kind());
    }

    /** Neurological findings: each that departs from normal, then the rest together. */
    void findings() {
        out.part("findings");
        List<Finding> findings = in.facts().file().examination().findings();
        if (findings.isEmpty()) {
            out.blank("none", "label.findings", "case/examination");
        }
        var normal = new ArrayList<Finding>();
        int number = 0;
        for (Finding finding : findings) {
            if (finding.result().abnormal()) {
                out.say("finding-" + ++number, sentence(finding.text()), "case/examination/" + path(finding));
            } else {
                normal.add(finding);
            }
        }
        if (!normal.isEmpty()) {
            String list = normal.stream().map(Finding::text).collect(Collectors.joining("; "));
            out.say("normal", out.words().get("findings.normal", list), "case/examination");
        }
    }

    private static String path(Finding finding) {
        return "%s/%s/%s"
                .formatted(
                        finding.side().name().toLowerCase(Locale.ROOT),
                        finding.kind().block(),
                        finding.target());
    }

    private static String sentence(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** Suspected places, tolerance; the therapist decides. */
    void judgement() {
        out.part("judgement");
        if (in.plan().result().isEmpty()) {
            out.say("stopped", out.words().get("judgement.stopped"), "case/screening");
            return;
        }
        var plan = in.plan().result().get().plan();
        boolean own = !in.facts().file().sites().isEmpty();
        for (SiteShare site : plan.sites()) {
            out.say(
                    "site-" + site.site().replace(' ', '-'),
                    out.words()
                            .get(
                                    own ? "judgement.site.own" : "judgement.site",
                                    site.site(),
                                    Math.round(100 * site.probability())),
                    own ? "case/sites" : "plan/sites");
        }
        for (SiteTolerance site : plan.tolerance().perSite()) {
            out.say(
                    "tolerance-" + site.site().replace(' ', '-'),
                    out.words()
                            .get(
                                    "judgement.tolerance",
                                    site.site(),
                                    "%.1f".formatted(site.medianPct()),
                                    "%.1f".formatted(site.lowPct()),
                                    "%.1f".formatted(site.highPct())),
                    "case/tests",
                    "plan/tolerance");
        }
        out.fixed("judgement.decides");
    }
}
