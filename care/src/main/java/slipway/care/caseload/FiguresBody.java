package slipway.care.caseload;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Function;
import slipway.care.record.caseload.KeptFigures;
import slipway.reasoning.caseload.CaseloadReport;
import slipway.reasoning.caseload.CaseloadReport.Group;
import slipway.reasoning.caseload.CaseloadReport.OfMeasure;
import slipway.reasoning.caseload.CaseloadReport.Quartiles;
import slipway.reasoning.caseload.Funnel;
import slipway.reasoning.caseload.Shown;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Figures as JSON. What is not shown is not kept either: it stands as {@code null}, so that the table holds no more than the
 * page.
 */
final class FiguresBody {
    /** Counts the forms; those of another are worked out again. */
    private static final int FORM = 1;

    private FiguresBody() {}

    static KeptFigures of(CaseloadFigures figures) {
        CaseloadReport report = figures.report();
        ObjectNode body = JsonMapper.shared().createObjectNode();
        body.put("form", FORM).put("episodes", report.episodes()).put("measure", figures.measure());
        ObjectNode measures = body.putObject("measures");
        new TreeMap<>(report.measures()).forEach((id, shown) -> put(measures, id, shown, FiguresBody::measure));
        put(body, "reportedDays", report.reportedDays(), FiguresBody::quartiles);
        put(body, "daysToDischarge", report.medianDaysToDischarge(), FiguresBody::days);
        put(body, "stalled", report.stalled(), FiguresBody::share);
        ObjectNode groups = body.putObject("groups");
        new TreeMap<>(report.groups())
                .forEach((id, group) -> groups.set(
                        id, share(group.better()).put("place", group.place().name())));
        return new KeptFigures(figures.at(), body);
    }

    private static <T> void put(ObjectNode into, String name, Shown<T> shown, Function<T, ObjectNode> form) {
        if (shown instanceof Shown.Figure<T> figure) {
            into.set(name, form.apply(figure.value()).put("people", figure.people()));
        } else {
            into.putNull(name);
        }
    }

    private static ObjectNode measure(OfMeasure of) {
        ObjectNode node = JsonMapper.shared().createObjectNode();
        node.set("gain", quartiles(of.gain()));
        put(node, "better", of.better(), FiguresBody::share);
        put(node, "important", of.important(), FiguresBody::share);
        return node;
    }

    private static ObjectNode quartiles(Quartiles of) {
        return JsonMapper.shared()
                .createObjectNode()
                .put("lower", of.lower())
                .put("middle", of.middle())
                .put("upper", of.upper());
    }

    private static ObjectNode days(OptionalInt median) {
        ObjectNode node = JsonMapper.shared().createObjectNode();
        median.ifPresent(days -> node.put("median", days));
        return node;
    }

    private static ObjectNode share(Shown.Share share) {
        return JsonMapper.shared()
                .createObjectNode()
                .put("count", share.count())
                .put("of", share.of());
    }

    /** Empty if they stand in another form. */
    static Optional<CaseloadFigures> read(KeptFigures kept) {
        ObjectNode body = kept.body();
        if (body.path("form").asInt(0) != FORM) {
            return Optional.empty();
        }
        var measures = new LinkedHashMap<String, Shown<OfMeasure>>();
        body.path("measures")
                .properties()
                .forEach(each -> measures.put(each.getKey(), shown(each.getValue(), FiguresBody::readMeasure)));
        return Optional.of(new CaseloadFigures(
                kept.at(),
                body.path("measure").asString(),
                new CaseloadReport(
                        body.path("episodes").asInt(),
                        measures,
                        shown(body.path("reportedDays"), FiguresBody::readQuartiles),
                        shown(body.path("daysToDischarge"), FiguresBody::readDays),
                        shown(body.path("stalled"), FiguresBody::readShare),
                        groups(body.path("groups")))));
    }

    private static Map<String, Group> groups(JsonNode node) {
        var groups = new LinkedHashMap<String, Group>();
        node.properties()
                .forEach(each -> groups.put(
                        each.getKey(),
                        new Group(
                                readShare(each.getValue()),
                                Funnel.Place.valueOf(
                                        each.getValue().path("place").asString()))));
        return groups;
    }

    private static <T> Shown<T> shown(JsonNode node, Function<JsonNode, T> form) {
        return node.isObject()
                ? new Shown.Figure<>(form.apply(node), node.path("people").asInt())
                : new Shown.TooFew<>(Shown.smallest());
    }

    private static OfMeasure readMeasure(JsonNode node) {
        return new OfMeasure(
                readQuartiles(node.path("gain")),
                shown(node.path("better"), FiguresBody::readShare),
                shown(node.path("important"), FiguresBody::readShare));
    }

    private static Quartiles readQuartiles(JsonNode node) {
        return new Quartiles(
                node.path("lower").asDouble(),
                node.path("middle").asDouble(),
                node.path("upper").asDouble());
    }

    private static OptionalInt readDays(JsonNode node) {
        return node.has("median") ? OptionalInt.of(node.path("median").asInt()) : OptionalInt.empty();
    }

    private static Shown.Share readShare(JsonNode node) {
        return new Shown.Share(node.path("count").asInt(), node.path("of").asInt());
    }
}
