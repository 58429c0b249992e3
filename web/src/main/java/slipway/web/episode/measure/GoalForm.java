package slipway.web.episode.measure;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import slipway.exercises.yaml.Mistake;
import slipway.reasoning.course.GoalCheck;
import slipway.reasoning.course.GoalDraft;
import slipway.web.form.FormReader;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The form of a goal: who does what, under which condition, how well by which measure, by when. */
record GoalForm(
        String person, String activity, String condition, String measure, String baseline, String target, String due) {
    private static final Map<GoalCheck.Kind, String> FIELDS = Map.ofEntries(
            Map.entry(GoalCheck.Kind.NO_PERSON, "person"),
            Map.entry(GoalCheck.Kind.NO_FUNCTION, "activity"),
            Map.entry(GoalCheck.Kind.NO_CONDITION, "condition"),
            Map.entry(GoalCheck.Kind.NO_MEASURE, "measure"),
            Map.entry(GoalCheck.Kind.NO_BASELINE, "baseline"),
            Map.entry(GoalCheck.Kind.NO_TARGET, "target"),
            Map.entry(GoalCheck.Kind.NO_DATE, "due"),
            Map.entry(GoalCheck.Kind.PAST_DATE, "due"),
            Map.entry(GoalCheck.Kind.OUTSIDE_SCALE, "target"),
            Map.entry(GoalCheck.Kind.WRONG_WAY, "target"),
            Map.entry(GoalCheck.Kind.WITHIN_ERROR, "target"),
            Map.entry(GoalCheck.Kind.NOT_IMPORTANT, "target"));

    GoalForm(
            @Nullable String person,
            @Nullable String activity,
            @Nullable String condition,
            @Nullable String measure,
            @Nullable String baseline,
            @Nullable String target,
            @Nullable String due) {
        this.person = FormReader.text(person).strip();
        this.activity = FormReader.text(activity).strip();
        this.condition = FormReader.text(condition).strip();
        this.measure = FormReader.text(measure).strip();
        this.baseline = FormReader.text(baseline).strip();
        this.target = FormReader.text(target).strip();
        this.due = FormReader.text(due).strip();
    }

    ObjectNode fields() {
        ObjectNode fields = JsonMapper.shared().createObjectNode();
        fields.putObject("goal")
                .put("person", person)
                .put("activity", activity)
                .put("condition", condition)
                .put("measure", measure)
                .put("baseline", baseline)
                .put("target", target)
                .put("due", due);
        return fields;
    }

    /** As a draft; a number or day that cannot be read is missing, and the check says so. */
    GoalDraft draft(String id) {
        return new GoalDraft(
                id,
                person,
                activity,
                condition,
                measure.isEmpty() ? Optional.empty() : Optional.of(measure),
                number(baseline),
                number(target),
                day(due));
    }

    /** A goal as it is kept. */
    ObjectNode kept() {
        ObjectNode kept = JsonMapper.shared().createObjectNode();
        kept.put("person", person).put("activity", activity).put("condition", condition);
        kept.put("baseline", number(baseline).orElseThrow())
                .put("target", number(target).orElseThrow());
        return kept;
    }

    /** A kept goal as a draft. */
    static GoalDraft draft(slipway.care.record.follow.Goal goal) {
        ObjectNode kept = goal.target();
        return new GoalDraft(
                goal.id(),
                kept.path("person").asString(""),
                kept.path("activity").asString(goal.words()),
                kept.path("condition").asString(""),
                goal.measureId(),
                number(kept.path("baseline")),
                number(kept.path("target")),
                goal.due());
    }

    static Mistake mistake(GoalCheck.Flaw flaw) {
        return new Mistake(0, 0, "goal." + FIELDS.getOrDefault(flaw.kind(), "activity"), flaw.text());
    }

    private static OptionalDouble number(JsonNode node) {
        return node.isNumber() ? OptionalDouble.of(node.asDouble()) : OptionalDouble.empty();
    }

    private static OptionalDouble number(String text) {
        try {
            double value = Double.parseDouble(text.replace(',', '.'));
            return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
