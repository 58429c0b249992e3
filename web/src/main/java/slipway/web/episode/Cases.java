package slipway.web.episode;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.HexFormat;
import java.util.OptionalInt;
import org.springframework.stereotype.Component;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.CaseParts;
import slipway.care.kept.KeptAnswers;
import slipway.care.record.access.Clinic;
import slipway.care.record.assembly.Assembly;
import slipway.care.record.assembly.CaseAssembly;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.ResultInputs;
import slipway.care.record.content.Section;
import slipway.care.visit.Visit;
import slipway.care.visit.VisitPlan;
import slipway.reasoning.screening.ScreeningInput;
import slipway.web.shell.Pages;
import tools.jackson.databind.node.ObjectNode;

/** From a chart to a case, and from there to what is computed. The same input is computed once and kept for a while. */
@Component
public class Cases {
    /** Enough for everybody who works at the same time; a plan is some hundred kilobytes. */
    private static final int KEPT = 64;

    private final Desk desk;
    private final KeptAnswers<String, VisitPlan> plans =
            new KeptAnswers<>(KEPT, Runtime.getRuntime().availableProcessors());

    Cases(Desk desk) {
        this.desk = desk;
    }

    /** What is there of the case. */
    public ObjectNode tree(Chart chart) {
        return CaseAssembly.tree(chart.person(), chart.episode(), clinic(chart), chart.sections(), today());
    }

    /** The case, or what keeps it from being one. */
    public Assembly assemble(Chart chart) {
        return CaseAssembly.of(tree(chart));
    }

    /** The visit of a case: screening, sites, tolerance, plan. A second or so the first time, nothing after that. */
    public VisitPlan visit(Assembly.Complete whole) {
        return plans.get(digest(whole.text()), () -> visit(whole.file()));
    }

    private static VisitPlan visit(CaseFile file) {
        return Visit.plan(file, Pages.version());
    }

    /** What the screening looks at, as far as it is recorded. */
    public ScreeningInput screeningInput(Chart chart) {
        OptionalInt age = chart.person().details().age().stream()
                .mapToInt(known -> (int) known.yearsOn(today()))
                .findFirst();
        return CaseParts.screeningInput(tree(chart), age);
    }

    /** What a result of now was computed from. */
    public ResultInputs inputs(Chart chart, String text) {
        var versions = new EnumMap<Section, Long>(Section.class);
        chart.sections().forEach((section, kept) -> versions.put(section, kept.version()));
        return new ResultInputs(versions, digest(text));
    }

    /** The clinic of an episode. */
    public Clinic clinic(Chart chart) {
        return desk.records().clinics().find(chart.episode().clinicId()).orElseThrow();
    }

    /** Today where the server stands. */
    public LocalDate today() {
        return LocalDate.ofInstant(desk.clock().instant(), ZoneId.systemDefault());
    }

    /** SHA-256 of a text in UTF-8, in hexadecimal. */
    public static String digest(String text) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(sha.digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
