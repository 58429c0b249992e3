package slipway.exercises.format;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipway.exercises.exercise.BodyJoint;
import slipway.exercises.exercise.OpenAngle;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.NearestWord;
import slipway.exercises.yaml.YamlDocument;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;
import tools.jackson.databind.JsonNode;

/**
 * The movement part of a file, read even if other parts are broken, so that all its mistakes can be told at once.
 *
 * @param base the named position
 * @param poses the fixed posture and the open joints of each pose, by its id
 * @param wrong the posture of each common error
 * @param open what the plan chooses
 */
record PoseTexts(Position base, Map<String, Pose> poses, List<Posture> wrong, Map<BodyJoint, OpenAngle> open) {
    record Pose(Posture fixed, Map<BodyJoint, OpenAngle> open) {
        /** With the open angles as shown in pictures. */
        Posture shown() {
            Posture posture = fixed;
            for (OpenAngle angle : open.values()) {
                posture = posture.with(angle.joint().joint(), angle.joint().limb(), angle.shownDeg());
            }
            return posture;
        }
    }

    /** The pose of this id, which the reading has found. */
    Pose pose(String id) {
        Pose pose = poses.get(id);
        if (pose == null) {
            throw new IllegalArgumentException("no pose " + id);
        }
        return pose;
    }

    static PoseTexts read(YamlDocument document, List<Mistake> mistakes) {
        return new Reading(document, mistakes).read();
    }

    /** One reading; holds what its steps share. */
    private static final class Reading {
        private final YamlDocument document;
        private final List<Mistake> mistakes;
        private final Map<BodyJoint, OpenAngle> open = new LinkedHashMap<>();
        /** Also those with a mistake, so that one mistake is not told twice. */
        private final Set<BodyJoint> named = new HashSet<>();

        private final Map<String, Pose> poses = new LinkedHashMap<>();
        private final List<Posture> wrong = new ArrayList<>();

        Reading(YamlDocument document, List<Mistake> mistakes) {
            this.document = document;
            this.mistakes = mistakes;
        }

        PoseTexts read() {
            JsonNode root = document.root();
            Position base = base(root.at("/position/base").asString(""));
            Posture everywhere = AngleText.read(
                            document,
                            "/position/angles",
                            root.at("/position/angles").asString(""),
                            mistakes)
                    .on(base.posture(), document, "/position/angles", mistakes);
            readOpen(root.path("open"));
            readPoses(root.path("poses"), everywhere);
            checkSteps(root.path("steps"));
            readErrors(root.path("errors"));
            return new PoseTexts(base, poses, wrong, open);
        }

        private Position base(String name) {
            Optional<Position> base = Position.find(name);
            if (base.isEmpty() && !name.isEmpty()) {
                note(
                        "/position/base",
                        NearestWord.complaint("position", name, Position.all().keySet()));
            }
            return base.orElseGet(() -> new Position("unknown", Posture.reference()));
        }

        private void readOpen(JsonNode list) {
            for (int i = 0; i < list.size(); i++) {
                String pointer = "/open/" + i;
                String key = list.path(i).path("joint").asString("");
                BodyJoint joint = BodyJoint.find(key).orElse(null);
                if (joint == null) {
                    note(pointer + "/joint", NearestWord.complaint("joint", key, jointKeys()));
                    continue;
                }
                named.add(joint);
                try {
                    var angle = new OpenAngle(
                            joint,
                            list.path(i).path("easiest").asDouble(Double.NaN),
                            list.path(i).path("farthest").asDouble(Double.NaN),
                            list.path(i).path("shown").asDouble(Double.NaN));
                    if (open.put(joint, angle) != null) {
                        note(pointer + "/joint", "the open angle of %s is given twice".formatted(joint));
                    }
                } catch (IllegalArgumentException e) {
                    note(pointer, String.valueOf(e.getMessage()));
                }
            }
        }

        private static List<String> jointKeys() {
            return Arrays.stream(Joint.values()).map(Joint::key).toList();
        }

        private void readPoses(JsonNode list, Posture everywhere) {
            var used = new HashSet<BodyJoint>();
            for (int i = 0; i < list.size(); i++) {
                String pointer = "/poses/" + i + "/angles";
                AngleText text = AngleText.read(
                        document, pointer, list.path(i).path("angles").asString(""), mistakes);
                var mine = new LinkedHashMap<BodyJoint, OpenAngle>();
                for (BodyJoint joint : text.open()) {
                    OpenAngle angle = open.get(joint);
                    used.add(joint);
                    if (angle != null) {
                        mine.put(joint, angle);
                    } else if (!named.contains(joint)) {
                        note(pointer, "%s is open but has no range under \"open\"".formatted(joint));
                    }
                }
                String id = list.path(i).path("id").asString("");
                Posture fixed = text.on(everywhere, document, pointer, mistakes);
                if (poses.put(id, new Pose(fixed, mine)) != null) {
                    note("/poses/" + i + "/id", "the pose \"%s\" is given twice".formatted(id));
                }
            }
            open.keySet().stream()
                    .filter(joint -> !used.contains(joint))
                    .forEach(joint -> note("/open", "the open angle of %s is used in no pose".formatted(joint)));
        }

        private void checkSteps(JsonNode list) {
            for (int i = 0; i < list.size(); i++) {
                String id = list.path(i).path("pose").asString("");
                if (!id.isEmpty() && !poses.containsKey(id)) {
                    note("/steps/" + i + "/pose", NearestWord.complaint("pose", id, poses.keySet()));
                }
            }
        }

        private void readErrors(JsonNode list) {
            for (int i = 0; i < list.size(); i++) {
                String id = list.path(i).path("pose").asString("");
                Pose pose = poses.get(id);
                if (pose == null) {
                    note("/errors/" + i + "/pose", NearestWord.complaint("pose", id, poses.keySet()));
                    continue;
                }
                String pointer = "/errors/" + i + "/angles";
                AngleText text = AngleText.read(
                        document, pointer, list.path(i).path("angles").asString(""), mistakes);
                if (!text.open().isEmpty()) {
                    note(pointer, "a wrong posture has no open angles");
                }
                Posture right = pose.shown();
                Posture wrongPosture = text.on(right, document, pointer, mistakes);
                if (wrongPosture.equals(right)) {
                    note(pointer, "the wrong posture must differ from the pose \"%s\"".formatted(id));
                }
                wrong.add(wrongPosture);
            }
        }

        private void note(String pointer, String message) {
            mistakes.add(document.mistake(pointer, message));
        }
    }
}
