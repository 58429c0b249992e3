package slipway.web.told;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Decision;
import slipway.care.record.chart.Verdict;
import slipway.care.record.content.Section;
import slipway.exercises.yaml.Mistake;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A field that is about to say other than what the person told about it, with why. A text that keeps what was told and
 * adds to it is none, and so is a field that said so before anything was told.
 *
 * @param path of the field
 * @param told in words
 * @param chosen what it is about to say; empty if the answer is taken out
 * @param reason why; blank if none was given
 */
public record Overwriting(String path, String told, String chosen, String reason) {
    /** Top key of the reasons in what a form sends. */
    public static final String WHY = "why";

    /** Longest reason, in characters. */
    public static final int LONGEST = 400;

    /**
     * All of a section that is about to be saved, by path.
     *
     * @param why reasons as the form sent them, by the same paths
     */
    public static List<Overwriting> of(ObjectNode before, ObjectNode after, ObjectNode why, Chart chart) {
        Map<String, Said> said = Telling.of(chart).map(Telling::said).orElse(Map.of());
        var found = new ArrayList<Overwriting>();
        new TreeMap<>(said).forEach((path, each) -> {
            String reason = text(at(why, path)).strip();
            boolean changed = !text(at(before, path)).equals(text(at(after, path)));
            if ((changed || !reason.isEmpty()) && isOther(at(before, path), at(after, path), each)) {
                found.add(new Overwriting(path, each.words(), text(at(after, path)), reason));
            }
        });
        return found;
    }

    private static boolean isOther(JsonNode before, JsonNode after, Said said) {
        boolean same = text(after).equals(text(said.value()));
        boolean added =
                said.value().isString() && text(after).contains(said.value().stringValue());
        boolean takenOut = text(before).equals(text(said.value()));
        return !same && !added && (!text(after).isEmpty() || takenOut);
    }

    /** What is wrong with the reason; empty if it will do. */
    public Optional<Mistake> mistake(String missing, String tooLong) {
        String wrong = reason.isEmpty() ? missing : reason.length() > LONGEST ? tooLong : "";
        return wrong.isEmpty() ? Optional.empty() : Optional.of(new Mistake(0, 0, path, wrong));
    }

    /** Keeps it as a decision, which the trail keeps too. */
    public void note(Chart chart, Section section) {
        chart.decisions().add("intake/" + section.key() + "/" + path, Verdict.CHANGE, told, chosen, reason);
    }

    /** Why a field says other than what was told, by path, as long as it says what the reason was given for. */
    public static Map<String, String> reasons(Chart chart) {
        var reasons = new TreeMap<String, String>();
        for (Decision decision : chart.decisions().about("intake")) {
            if (decision.verdict() == Verdict.CHANGE) {
                String[] about = decision.about().split("/", 3);
                ObjectNode now = Section.find(about[1])
                        .map(section -> chart.section(section).content())
                        .orElseThrow();
                if (text(at(now, about[2])).equals(decision.chosen())) {
                    reasons.put(about[2], decision.reason());
                } else {
                    reasons.remove(about[2]);
                }
            }
        }
        return reasons;
    }

    private static JsonNode at(JsonNode content, String path) {
        int dot = path.indexOf('.');
        return content.path(path.substring(0, dot)).path(path.substring(dot + 1));
    }

    private static String text(JsonNode value) {
        return value.isArray()
                ? value.valueStream()
                        .map(each -> Objects.requireNonNull(each.asString("")))
                        .collect(Collectors.joining(", "))
                : value.asString("");
    }
}
