package slipway.web.episode.tolerance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import slipway.care.casefile.TestKind;
import slipway.care.record.assembly.Assembly;
import slipway.care.record.chart.Chart;
import slipway.care.visit.VisitPlan;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Position;
import slipway.web.episode.Cases;
import slipway.web.episode.Step;
import slipway.web.episode.StepPage;
import slipway.web.episode.VisitPictures;
import slipway.web.form.FormView;
import slipway.web.form.Option;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The tolerance. */
@Component
class ToleranceStep implements StepPage {
    private static final int RULER_WIDTH = 350;

    private static final Words WORDS = Words.beside(ToleranceStep.class, Language.EN);

    /** The rows that a new form offers: both sides of the two usual tests. */
    private static final List<String[]> USUAL = List.of(
            new String[] {"straight-leg-raise", "right"},
            new String[] {"straight-leg-raise", "left"},
            new String[] {"slump", "right"},
            new String[] {"slump", "left"});

    private static final int SPARE_ROWS = 2;
    private static final List<String> SIDES = List.of("right", "left");

    private final Cases cases;

    ToleranceStep(Cases cases) {
        this.cases = cases;
    }

    @Override
    public Step step() {
        return Step.TOLERANCE;
    }

    @Override
    public Words words() {
        return WORDS;
    }

    /** A row that names a test but says nothing of it was not used. */
    @Override
    public ObjectNode adjust(Chart chart, ObjectNode sent) {
        if (sent.get("tests") instanceof ArrayNode tests) {
            ArrayNode used = JsonMapper.shared().createArrayNode();
            tests.forEach(test -> {
                if (saysSomething(test)) {
                    used.add(withoutEmptyMovements((ObjectNode) test));
                }
            });
            sent.set("tests", used);
        }
        if (sent.get("pressureLimits") instanceof ArrayNode limits) {
            ArrayNode used = JsonMapper.shared().createArrayNode();
            limits.forEach(limit -> {
                if (limit.has("limitDeg") || limit.has("because")) {
                    used.add(limit);
                }
            });
            sent.set("pressureLimits", used);
        }
        return sent;
    }

    private static boolean saysSomething(JsonNode test) {
        return test.propertyNames().stream()
                .anyMatch(key -> !key.equals("test")
                        && !key.equals("side")
                        && !(key.equals("remoteMovements") && movements(test).isEmpty()));
    }

    private static List<JsonNode> movements(JsonNode test) {
        return test.path("remoteMovements")
                .valueStream()
                .filter(movement -> movement.has("change") || movement.has("toDeg") || movement.has("fromDeg"))
                .toList();
    }

    private static ObjectNode withoutEmptyMovements(ObjectNode test) {
        if (test.has("remoteMovements")) {
            ArrayNode kept = JsonMapper.shared().createArrayNode();
            movements(test).forEach(kept::add);
            if (kept.isEmpty()) {
                test.remove("remoteMovements");
            } else {
                test.set("remoteMovements", kept);
            }
        }
        return test;
    }

    @Override
    public void fill(Chart chart, FormView form, Model model) {
        model.addAttribute("rows", rows(form));
        model.addAttribute("kinds", options("test", TestKind.all().keySet()));
        model.addAttribute("sides", options("side", SIDES));
        model.addAttribute("symptoms", options("symptom", List.of("pain", "tingling", "numbness", "stretch")));
        model.addAttribute("yesNo", options("", List.of("yes", "no")));
        model.addAttribute("changes", options("change", List.of("eased", "worsened", "none")));
        model.addAttribute("joints", options("joint", List.of("ankle", "knee", "hip", "neck", "spine", "other-knee")));
        model.addAttribute("judgements", options("judgement", List.of("low", "moderate", "high")));
        model.addAttribute("positions", options("position", Position.all().keySet()));
        model.addAttribute("ranges", RangeRows.legs());
        model.addAttribute("trunk", RangeRows.trunk());
        model.addAttribute("limits", form.size("pressureLimits") + 1);
        Assembly assembly = cases.assemble(chart);
        model.addAttribute("assembly", assembly);
        Optional<VisitPlan> visit = assembly.complete()
                .filter(whole -> !whole.file().examination().tests().isEmpty())
                .map(cases::visit);
        model.addAttribute("visit", visit);
        model.addAttribute("ruler", visit.flatMap(each -> VisitPictures.ruler(each, RULER_WIDTH)));
    }

    /** What a row of the tests starts with: what is recorded, else what the form offers. */
    private static List<TestRow> rows(FormView form) {
        var rows = new ArrayList<TestRow>();
        int recorded = form.size("tests");
        for (int i = 0; i < recorded; i++) {
            String at = "tests[" + i + "]";
            rows.add(new TestRow(
                    at, form.value(at + ".test"), form.value(at + ".side"), form.size(at + ".remoteMovements")));
        }
        if (recorded == 0) {
            USUAL.forEach(usual -> rows.add(new TestRow("tests[" + rows.size() + "]", usual[0], usual[1], 0)));
        }
        for (int i = 0; i < SPARE_ROWS; i++) {
            rows.add(new TestRow("tests[" + rows.size() + "]", "", "", 0));
        }
        return rows;
    }

    private static List<Option> options(String group, Iterable<String> values) {
        return Stream.of(values)
                .flatMap(each -> java.util.stream.StreamSupport.stream(each.spliterator(), false))
                .map(value ->
                        new Option(value, WORDS.get((group.isEmpty() ? "" : group + ".") + value.replace(' ', '-'))))
                .toList();
    }
}
