package slipway.care.facts;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import slipway.care.record.chart.TryEntry;
import slipway.care.record.content.Paperwork;
import slipway.reasoning.billing.TimedService;
import slipway.reasoning.course.Discharge;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.MissingNode;
import tools.jackson.databind.node.ObjectNode;

/** Reads what the record keeps for papers; content was checked when it was saved. */
final class PaperworkReader {
    private final JsonNode root;

    PaperworkReader(ObjectNode section) {
        root = section.path(Paperwork.KEY);
    }

    Frame frame(Optional<Frame.Therapist> therapist) {
        JsonNode plan = root.path("plan");
        return new Frame(
                Optional.empty(),
                therapist,
                text(root, "referrer"),
                day(root, "orderedOn"),
                text(root, "payer").orElse("none"),
                new Frame.Dosage(whole(plan, "timesAWeek"), whole(plan, "weeks"), day(plan, "ends")),
                listed(root, "diagnoses", JsonNode::asString),
                listed(root, "sent", PaperworkReader::sent));
    }

    private static Frame.Sent sent(JsonNode node) {
        return new Frame.Sent(
                node.path("what").asString(""),
                LocalDate.parse(node.path("day").asString("")),
                node.path("to").asString(""),
                node.path("how").asString(""));
    }

    EpisodeFacts.Ending ending() {
        JsonNode relapse = root.path("relapse");
        JsonNode alone = root.path("alone");
        return new EpisodeFacts.Ending(
                new Discharge.Alone(whole(alone, "days"), whole(alone, "flares")),
                relapse.has("restartRung") && relapse.has("callIf")
                        ? Optional.of(new Discharge.RelapsePlan(
                                relapse.path("restartRung").asInt(), listed(relapse, "callIf", JsonNode::asString)))
                        : Optional.empty());
    }

    /** A visit with what was written of it. */
    Treatment treatment(int number, LocalDate day, Optional<String> by, List<TryEntry> tries) {
        JsonNode words = root.path("visits")
                .valueStream()
                .filter(visit -> visit.path("number").asInt(0) == number)
                .findFirst()
                .orElse(MissingNode.getInstance());
        return new Treatment(
                number,
                day,
                by,
                listed(
                        words,
                        "services",
                        each -> new TimedService(
                                each.path("name").asString(""),
                                each.path("minutes").asInt())),
                whole(words, "untimedMinutes"),
                new Treatment.Notes(
                        text(words, "told"), text(words, "done"), text(words, "response"), text(words, "next")),
                tries);
    }

    private static <T> List<T> listed(JsonNode parent, String key, Function<JsonNode, T> reader) {
        var read = new ArrayList<T>();
        parent.path(key).valueStream().forEach(node -> read.add(reader.apply(node)));
        return read;
    }

    private static Optional<String> text(JsonNode node, String key) {
        return node.has(key) ? Optional.of(node.path(key).asString()) : Optional.empty();
    }

    private static Optional<LocalDate> day(JsonNode node, String key) {
        return text(node, key).map(LocalDate::parse);
    }

    private static OptionalInt whole(JsonNode node, String key) {
        return node.has(key) ? OptionalInt.of(node.path(key).asInt()) : OptionalInt.empty();
    }
}
