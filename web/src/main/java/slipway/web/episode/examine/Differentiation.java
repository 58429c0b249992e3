package slipway.web.episode.examine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.ui.Model;
import slipway.care.casefile.TestKind;
import slipway.exercises.yaml.Mistake;
import slipway.web.form.FormReader;
import slipway.web.form.FormView;
import slipway.web.form.Option;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A remote movement at the end of a neural test, entered in the examination and kept with the test. */
final class Differentiation {
    private static final String AT = "differentiation";
    private static final List<String> OF_TEST = List.of("onsetDeg", "symptom", "familiar");
    private static final List<String> OF_MOVEMENT = List.of("joint", "fromDeg", "toDeg", "limbHeld", "change");

    private final ObjectNode typed;

    private Differentiation(ObjectNode typed) {
        this.typed = typed;
    }

    /** What the form sent, read as the same fields of the tolerance are. */
    static Differentiation read(Map<String, String[]> fields) {
        Map<String, String[]> known = new HashMap<>();
        fields.forEach((name, values) -> {
            String key = name.replaceFirst("^" + AT + "[.]", "");
            known.put((OF_MOVEMENT.contains(key) ? "tests[0].remoteMovements[0]." : "tests[0].") + key, values);
        });
        JsonNode test = FormReader.read(known, List.of("tests")).path("tests").path(0);
        ObjectNode typed = JsonMapper.shared().createObjectNode();
        test.path("remoteMovements").path(0).properties().forEach(each -> typed.set(each.getKey(), each.getValue()));
        Stream.concat(Stream.of("test", "side"), OF_TEST.stream())
                .filter(test::has)
                .forEach(key -> typed.set(key, test.get(key)));
        return new Differentiation(typed);
    }

    /** The empty form, and what can be chosen. */
    static void fill(Model model) {
        if (!model.containsAttribute(AT)) {
            model.addAttribute(AT, new FormView(JsonMapper.shared().createObjectNode(), List.of()));
        }
        model.addAttribute("kinds", options("test.", TestKind.all().keySet().stream()));
        model.addAttribute("sides", options("side.", ExamSheet.SIDES.stream()));
        model.addAttribute(
                "joints", options("joint.", Stream.of("ankle", "knee", "hip", "neck", "spine", "other-knee")));
        model.addAttribute("changes", options("change.", Stream.of("eased", "worsened", "none")));
        model.addAttribute("symptoms", options("symptom.", Stream.of("pain", "tingling", "numbness", "stretch")));
        model.addAttribute("yesNo", options("", Stream.of("yes", "no")));
    }

    private static List<Option> options(String group, Stream<String> values) {
        return values.map(value -> new Option(value, ExamineStep.WORDS.get(group + value)))
                .toList();
    }

    /** The form with what was typed and what is wrong with it. */
    FormView view(List<Mistake> mistakes) {
        ObjectNode content = JsonMapper.shared().createObjectNode();
        content.set(AT, typed);
        return new FormView(content, mistakes);
    }

    /** Fields that are needed and blank. */
    List<Mistake> missing(ObjectNode tolerance) {
        var missing = new ArrayList<Mistake>();
        Stream.concat(Stream.of("test", "side"), OF_MOVEMENT.stream())
                .filter(key -> !typed.has(key))
                .forEach(key -> missing.add(mistake(key, ExamineStep.WORDS.get("differentiation.needed"))));
        if (!typed.has("onsetDeg") && indexIn(tolerance) < 0) {
            missing.add(mistake("onsetDeg", ExamineStep.WORDS.get("differentiation.onset.needed")));
        }
        return missing;
    }

    private static Mistake mistake(String key, String words) {
        return new Mistake(0, 0, key.isEmpty() ? AT : AT + "." + key, words);
    }

    /** The tolerance with the movement in it: at the same test of the same leg, or at a new one. */
    ObjectNode into(ObjectNode tolerance) {
        ObjectNode content = tolerance.deepCopy();
        ArrayNode tests = content.withArray("/tests");
        int index = indexIn(content);
        ObjectNode test = index >= 0 ? (ObjectNode) tests.get(index) : tests.addObject();
        if (index < 0) {
            test.set("test", typed.path("test"));
            test.set("side", typed.path("side"));
        }
        OF_TEST.stream().filter(typed::has).forEach(key -> test.set(key, typed.get(key)));
        ObjectNode movement = test.withArray("/remoteMovements").addObject();
        OF_MOVEMENT.forEach(key -> movement.set(key, typed.path(key)));
        return content;
    }

    private int indexIn(ObjectNode tolerance) {
        int index = 0;
        for (JsonNode test : tolerance.path("tests")) {
            if (test.path("test").equals(typed.path("test"))
                    && test.path("side").equals(typed.path("side"))
                    && !test.has("posture")) {
                return index;
            }
            index++;
        }
        return -1;
    }

    /** Mistakes of the tolerance as mistakes of this form. */
    List<Mistake> own(List<Mistake> mistakes) {
        return mistakes.stream()
                .map(each -> {
                    String key = each.path().replaceAll(".*[.]", "");
                    return mistake(OF_TEST.contains(key) || OF_MOVEMENT.contains(key) ? key : "", each.message());
                })
                .distinct()
                .toList();
    }
}
