package slipway.exercises.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import slipway.exercises.exercise.Dose;
import slipway.exercises.exercise.Exclusion;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Indication;
import slipway.exercises.exercise.Instructions;
import slipway.exercises.exercise.KeyPose;
import slipway.exercises.exercise.Movement;
import slipway.exercises.exercise.MovingSide;
import slipway.exercises.exercise.Phrase;
import slipway.exercises.exercise.PropPlace;
import slipway.exercises.exercise.Purpose;
import slipway.exercises.exercise.Setting;
import slipway.exercises.exercise.Surface;
import slipway.exercises.exercise.Use;
import slipway.exercises.yaml.YamlDocument;
import slipway.mechanics.body.Arms;
import slipway.mechanics.body.Prop;
import slipway.mechanics.body.Support;
import tools.jackson.databind.JsonNode;

/** Builds the records from a tree that keeps to the schema. */
final class ExerciseTree {
    private final JsonNode root;
    private final PoseTexts poses;

    private ExerciseTree(JsonNode root, PoseTexts poses) {
        this.root = root;
        this.poses = poses;
    }

    static Exercise build(YamlDocument document, PoseTexts poses) {
        return new ExerciseTree(document.root(), poses).exercise();
    }

    private Exercise exercise() {
        return new Exercise(
                root.path("id").asString(),
                phrase(root.path("name")),
                use(),
                setting(root.path("position")),
                movement(),
                instructions(),
                dose(root.path("dose")),
                new Exercise.Neighbours(texts(root.path("easier")), texts(root.path("harder"))));
    }

    private Use use() {
        return new Use(
                get(root.path("purpose"), Purpose::find),
                texts(root.path("tracts")),
                set(root.path("suits"), Indication::find),
                set(root.path("not-for"), Exclusion::find));
    }

    private Setting setting(JsonNode position) {
        return new Setting(
                get(position.path("support"), Support::find),
                poses.base(),
                list(position.path("surfaces"), node -> get(node, Surface::find)),
                list(
                        position.path("props"),
                        node -> new Setting.PropUse(
                                get(node.path("prop"), Prop::find), get(node.path("at"), PropPlace::find))));
    }

    private Movement movement() {
        Arms usual = get(root.at("/position/arms"), Arms::find);
        var keyPoses = list(root.path("poses"), node -> {
            String id = node.path("id").asString();
            PoseTexts.Pose pose = poses.pose(id);
            return new KeyPose(
                    id,
                    pose.fixed(),
                    pose.open(),
                    Arms.find(node.path("arms").asString("")).orElse(usual),
                    node.path("seconds").asDouble(),
                    node.path("hold").asDouble(0));
        });
        return new Movement(
                keyPoses, List.copyOf(poses.open().values()), get(root.at("/position/side"), MovingSide::find));
    }

    private Instructions instructions() {
        var errors = new ArrayList<Instructions.CommonError>();
        JsonNode list = root.path("errors");
        for (int i = 0; i < list.size(); i++) {
            errors.add(new Instructions.CommonError(
                    phrase(list.path(i)),
                    list.path(i).path("pose").asString(),
                    poses.wrong().get(i)));
        }
        return new Instructions(
                list(root.path("steps"), ExerciseTree::step),
                list(root.path("feel"), ExerciseTree::phrase),
                list(root.path("stop"), ExerciseTree::phrase),
                errors,
                list(root.path("cautions"), ExerciseTree::phrase));
    }

    private static Instructions.Step step(JsonNode node) {
        return new Instructions.Step(
                phrase(node), Optional.of(node.path("pose").asString("")).filter(id -> !id.isEmpty()));
    }

    private static Dose dose(JsonNode node) {
        JsonNode minutes = node.path("minutes");
        return new Dose(
                node.path("repetitions").asInt(),
                node.path("sets").asInt(),
                node.path("per-day").asInt(),
                node.path("days-per-week").asInt(),
                minutes.isMissingNode() ? OptionalInt.empty() : OptionalInt.of(minutes.asInt()),
                node.path("basis").asString());
    }

    private static Phrase phrase(JsonNode node) {
        return new Phrase(node.path("en").asString(), node.path("es").asString());
    }

    private static List<String> texts(JsonNode list) {
        return list(list, JsonNode::asString);
    }

    private static <T> List<T> list(JsonNode list, Function<JsonNode, T> each) {
        var values = new ArrayList<T>();
        list.forEach(node -> values.add(each.apply(node)));
        return values;
    }

    private static <T> Set<T> set(JsonNode list, Function<String, Optional<T>> find) {
        return list(list, node -> get(node, find)).stream().collect(Collectors.toSet());
    }

    /** The schema lists the same words as the enum; a test holds them against each other. */
    private static <T> T get(JsonNode node, Function<String, Optional<T>> find) {
        String key = node.asString();
        return find.apply(key).orElseThrow(() -> new IllegalStateException("the schema allows \"" + key + "\""));
    }
}
