package slipway.web.episode.examine;

import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Result;
import slipway.reasoning.findings.ResultReader;
import slipway.web.episode.Step;
import slipway.web.episode.StepPage;
import slipway.web.episode.locate.Locating;
import slipway.web.form.FormView;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The examination. */
@Component
class ExamineStep implements StepPage {
    static final Words WORDS = Words.beside(ExamineStep.class, Language.EN);
    private static final int ALL = 500;
    private static final String POSITIVE = "positive";
    private static final String DEGREES = "degrees";

    private final Locating locating;

    ExamineStep(Locating locating) {
        this.locating = locating;
    }

    @Override
    public Step step() {
        return Step.EXAMINE;
    }

    @Override
    public Words words() {
        return WORDS;
    }

    /** A test without an angle is one word; what the form has no field for stays as it is. */
    @Override
    public ObjectNode adjust(Chart chart, ObjectNode sent) {
        ObjectNode kept = chart.section(Section.EXAMINATION).content();
        for (String side : ExamSheet.SIDES) {
            if (sent.path("examination").path(side).path("provocation") instanceof ObjectNode tests) {
                List.copyOf(tests.propertyNames()).forEach(test -> shorten(tests, test));
            }
            for (FindingKind kind : FindingKind.values()) {
                JsonNode before = kept.path("examination").path(side).path(kind.block());
                before.properties().stream()
                        .filter(entry -> !ExamSheet.isFieldName(entry.getKey()))
                        .forEach(entry -> sent.withObject("/examination/" + side + "/" + kind.block())
                                .set(entry.getKey(), entry.getValue()));
            }
        }
        return sent;
    }

    /** What the findings point to is kept with them, so that it can be shown later as it was. */
    @Override
    public void saved(Chart chart) {
        locating.keep(chart);
    }

    private static void shorten(ObjectNode tests, String test) {
        if (!(tests.get(test) instanceof ObjectNode result)) {
            return;
        }
        String word = result.path(POSITIVE).asString("");
        var meant = ResultReader.read(FindingKind.PROVOCATION, word);
        if (meant.isEmpty()) {
            return;
        }
        boolean positive = meant.get() == Result.Word.POSITIVE;
        if (result.has(DEGREES)) {
            result.put(POSITIVE, positive ? "yes" : "no");
        } else {
            tests.put(test, meant.get().text());
        }
    }

    @Override
    public void fill(Chart chart, FormView form, Model model) {
        FivePath path = FivePath.of(locating.advice(chart, ALL));
        List<ExamBlock> blocks = new ExamSheet(WORDS, form, path.items()).blocks();
        model.addAttribute("blocks", blocks);
        model.addAttribute("path", path);
        model.addAttribute(
                "areas",
                Area.of(blocks.stream()
                        .filter(block -> block.key().equals("symptoms"))
                        .findFirst()
                        .orElseThrow()));
        model.addAttribute("screened", !chart.section(Section.SCREENING).isEmpty());
        model.addAttribute("remote", remote(chart));
        model.addAttribute("unnamed", unnamed(chart));
        model.addAttribute("location", locating.locate(chart));
        Differentiation.fill(model);
    }

    /** What a movement far away did to the symptom, from the neural tests of the tolerance. */
    private static List<String> remote(Chart chart) {
        var remote = new ArrayList<String>();
        JsonNode tests = chart.section(Section.TOLERANCE).content().path("tests");
        for (JsonNode test : tests) {
            for (JsonNode movement : test.path("remoteMovements")) {
                remote.add(WORDS.get(
                        "remote.one",
                        WORDS.get("test." + test.path("test").asString()),
                        WORDS.get("side." + test.path("side").asString()),
                        WORDS.get("joint." + movement.path("joint").asString()),
                        WORDS.get("change." + movement.path("change").asString())));
            }
        }
        return remote;
    }

    /** Words of the record that cannot be the name of a field; they are kept and shown. */
    private static List<String> unnamed(Chart chart) {
        var unnamed = new ArrayList<String>();
        JsonNode kept = chart.section(Section.EXAMINATION).content().path("examination");
        for (String side : ExamSheet.SIDES) {
            for (FindingKind kind : FindingKind.values()) {
                kept.path(side).path(kind.block()).properties().stream()
                        .filter(entry -> !ExamSheet.isFieldName(entry.getKey()))
                        .map(entry -> "%s, %s: %s"
                                .formatted(
                                        entry.getKey(),
                                        WORDS.get("side." + side),
                                        entry.getValue().asString("")))
                        .forEach(unnamed::add);
            }
        }
        return unnamed;
    }
}
