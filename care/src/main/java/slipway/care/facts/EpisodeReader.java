package slipway.care.facts;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.BiFunction;
import slipway.care.casefile.CaseFile;
import slipway.care.record.chart.TryEntry;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.Pointers;
import slipway.exercises.yaml.YamlDocument;
import slipway.reasoning.billing.TimedService;
import slipway.reasoning.course.Discharge;
import slipway.reasoning.course.GoalDraft;
import tools.jackson.databind.JsonNode;

/** Makes facts of a file that keeps the schema; adds what is still wrong to the mistakes. */
final class EpisodeReader {
    private final YamlDocument document;
    private final List<Mistake> mistakes;

    EpisodeReader(YamlDocument document, List<Mistake> mistakes) {
        this.document = document;
        this.mistakes = mistakes;
    }

    Optional<EpisodeFacts> read(CaseFile file) {
        JsonNode root = document.root();
        if (!text(root, "case").equals(file.id())) {
            add("/case", "must be the id of the case file, %s, was %s".formatted(file.id(), text(root, "case")));
        }
        Frame frame = frame(root);
        List<Treatment> visits = listed(root, "visits", this::visit);
        List<Taken> scores = new ArrayList<>();
        listed(root, "measures", this::taken).forEach(found -> found.ifPresent(scores::add));
        String person = file.patient().name().orElse("The person");
        List<GoalDraft> goals = listed(root, "goals", (node, at) -> goal(node, at, person));
        once(goals);
        return mistakes.isEmpty()
                ? Optional.of(new EpisodeFacts(file, frame, visits, scores, goals, List.of(), ending(root)))
                : Optional.empty();
    }

    private Frame frame(JsonNode root) {
        JsonNode plan = root.path("plan");
        return new Frame(
                day(root, "/born", "born"),
                root.has("therapist")
                        ? Optional.of(new Frame.Therapist(
                                text(root.path("therapist"), "name"), find(root.path("therapist"), "licence")))
                        : Optional.empty(),
                find(root, "referrer"),
                day(root, "/orderedOn", "orderedOn"),
                find(root, "payer").orElse("none"),
                new Frame.Dosage(whole(plan, "timesAWeek"), whole(plan, "weeks"), day(plan, "/plan/ends", "ends")),
                listed(root, "diagnoses", (node, at) -> node.asString()),
                listed(root, "sent", this::sent));
    }

    private Frame.Sent sent(JsonNode node, String at) {
        return new Frame.Sent(
                text(node, "what"),
                neededDay(node, at),
                find(node, "to").orElse(""),
                find(node, "how").orElse(""));
    }

    private Treatment visit(JsonNode node, String at) {
        int number = Integer.parseInt(at.substring(at.lastIndexOf('/') + 1)) + 1;
        return new Treatment(
                number,
                neededDay(node, at),
                find(node, "by"),
                listed(
                        node,
                        at,
                        "services",
                        (each, place) -> new TimedService(
                                text(each, "name"), each.path("minutes").asInt())),
                whole(node, "untimedMinutes"),
                new Treatment.Notes(find(node, "told"), find(node, "done"), find(node, "response"), find(node, "next")),
                listed(node, at, "tries", (each, place) -> attempt(each)));
    }

    private static TryEntry attempt(JsonNode node) {
        return new TryEntry(
                text(node, "exercise"),
                node.path("repetitions").asInt(),
                node.path("worst").asDouble(),
                number(node, "settleMinutes"),
                number(node, "retestOnsetDeg"),
                yesNo(node, "retestWeaker"),
                yesNo(node, "released").orElse(false),
                find(node, "remark"));
    }

    private Optional<Taken> taken(JsonNode node, String at) {
        var answers = new TreeMap<Integer, Double>();
        node.path("answers")
                .propertyStream()
                .forEach(entry -> answers.put(
                        Integer.parseInt(entry.getKey()), entry.getValue().asDouble()));
        try {
            var taken = new Taken(
                    Taken.measure(text(node, "measure")), neededDay(node, at), number(node, "total"), answers);
            taken.score();
            return Optional.of(taken);
        } catch (IllegalArgumentException e) {
            add(at, String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }

    private GoalDraft goal(JsonNode node, String at, String person) {
        return new GoalDraft(
                text(node, "id"),
                person,
                find(node, "activity").orElse(""),
                find(node, "condition").orElse(""),
                find(node, "measure"),
                number(node, "baseline"),
                number(node, "target"),
                day(node, at + "/due", "due"));
    }

    private void once(List<GoalDraft> goals) {
        for (int i = 0; i < goals.size(); i++) {
            String id = goals.get(i).id();
            if (goals.subList(0, i).stream().anyMatch(other -> other.id().equals(id))) {
                add("/goals/" + i + "/id", "must be the id of one goal only, was " + id);
            }
        }
    }

    private static EpisodeFacts.Ending ending(JsonNode root) {
        JsonNode relapse = root.path("relapse");
        var callIf = new ArrayList<String>();
        relapse.path("callIf").forEach(each -> callIf.add(each.asString()));
        return new EpisodeFacts.Ending(
                new Discharge.Alone(whole(root.path("alone"), "days"), whole(root.path("alone"), "flares")),
                relapse.isObject()
                        ? Optional.of(new Discharge.RelapsePlan(
                                relapse.path("restartRung").asInt(), callIf))
                        : Optional.empty());
    }

    private <T> List<T> listed(JsonNode parent, String key, BiFunction<JsonNode, String, T> reader) {
        return listed(parent, "", key, reader);
    }

    private static <T> List<T> listed(JsonNode parent, String at, String key, BiFunction<JsonNode, String, T> reader) {
        var read = new ArrayList<T>();
        JsonNode list = parent.path(key);
        for (int i = 0; i < list.size(); i++) {
            read.add(reader.apply(list.get(i), Pointers.child(Pointers.child(at, key), i)));
        }
        return read;
    }

    private LocalDate neededDay(JsonNode node, String at) {
        return day(node, at + "/day", "day").orElse(LocalDate.EPOCH);
    }

    private Optional<LocalDate> day(JsonNode node, String pointer, String key) {
        try {
            return find(node, key).map(LocalDate::parse);
        } catch (DateTimeParseException e) {
            add(pointer, "must be a day as year-month-day, was \"%s\"".formatted(text(node, key)));
            return Optional.empty();
        }
    }

    private void add(String pointer, String message) {
        mistakes.add(document.mistake(pointer, message));
    }

    private static String text(JsonNode node, String key) {
        return node.path(key).asString();
    }

    private static Optional<String> find(JsonNode node, String key) {
        return node.has(key) ? Optional.of(node.path(key).asString()) : Optional.empty();
    }

    private static OptionalInt whole(JsonNode node, String key) {
        return node.has(key) ? OptionalInt.of(node.path(key).asInt()) : OptionalInt.empty();
    }

    private static OptionalDouble number(JsonNode node, String key) {
        return node.has(key) ? OptionalDouble.of(node.path(key).asDouble()) : OptionalDouble.empty();
    }

    private static Optional<Boolean> yesNo(JsonNode node, String key) {
        return find(node, key).map(word -> word.equals("yes") || word.equals("true"));
    }
}
