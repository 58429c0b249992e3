package slipway.web.bench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slipway.care.bench.Stance;
import slipway.documents.words.Words;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.pictures.figure.View;
import slipway.web.form.Option;
import tools.jackson.databind.json.JsonMapper;

/** The fields of the bench, filled with what was asked. */
public final class BenchForm {
    private static final int FIRST_UNMODELLED = 5;

    private final BenchQuery query;
    private final Words words;

    BenchForm(BenchQuery query, Words words) {
        this.query = query;
        this.words = words;
    }

    /**
     * One joint.
     *
     * @param name of the field
     * @param text what the field holds, as typed
     * @param slider the angle that counts, for the slider
     * @param wrong whether what was typed could not be used
     */
    public record JointField(
            String name, String label, String text, String slider, String lowDeg, String highDeg, boolean wrong) {}

    /** A group of joints under one heading. */
    public record Group(String title, List<JointField> fields) {}

    /** One of the two postures. */
    public record PostureFields(String letter, String prefix, String position, List<Group> groups, Group further) {}

    /** The fields of posture A, and of B if two are compared. */
    public List<PostureFields> postures() {
        var first = posture("a", "", query.first());
        return query.second()
                .map(stance -> List.of(first, posture("b", BenchQuery.SECOND, stance)))
                .orElse(List.of(first));
    }

    private PostureFields posture(String letter, String prefix, Stance stance) {
        List<Joint> leg = List.of(Joint.HIP, Joint.KNEE, Joint.ANKLE);
        List<Joint> further = BodyField.SHOWN.subList(FIRST_UNMODELLED, BodyField.SHOWN.size());
        var groups = List.of(
                new Group(words.get("group.own"), fields(prefix, stance, leg, Limb.OWN)),
                new Group(words.get("group.spine"), fields(prefix, stance, List.of(Joint.SPINE, Joint.NECK), Limb.OWN)),
                new Group(words.get("group.other"), fields(prefix, stance, leg, Limb.OTHER)));
        var rest = new java.util.ArrayList<>(fields(prefix, stance, further, Limb.OWN));
        rest.addAll(
                fields(prefix, stance, further.stream().filter(Joint::paired).toList(), Limb.OTHER));
        return new PostureFields(
                letter, prefix, stance.position().name(), groups, new Group(words.get("group.further"), rest));
    }

    private List<JointField> fields(String prefix, Stance stance, List<Joint> joints, Limb limb) {
        return joints.stream()
                .map(joint -> field(prefix, stance, new BodyField(joint, limb)))
                .toList();
    }

    private JointField field(String prefix, Stance stance, BodyField field) {
        String angle = Numbers.angle(stance.posture().angleDeg(field.joint(), field.limb()));
        String name = prefix + field.name();
        String typed = query.typed().getOrDefault("reset", "").equals(prefix.isEmpty() ? "a" : "b")
                ? ""
                : query.typed().getOrDefault(name, "");
        boolean wrong = !typed.isEmpty() && !same(typed, angle);
        return new JointField(
                name,
                BenchAnswers.jointWords(field.name()),
                wrong ? typed : angle,
                angle,
                Numbers.angle(field.joint().lowDeg()),
                Numbers.angle(field.joint().highDeg()),
                wrong);
    }

    private static boolean same(String typed, String angle) {
        try {
            double value = Double.parseDouble(typed.replace(',', '.').replace('\u2212', '-'));
            return Math.abs(value - Double.parseDouble(angle)) < 0.06;
        } catch (NumberFormatException e) {
            return false;
        }
    }

    public List<Option> positions() {
        return Position.all().keySet().stream()
                .map(name -> new Option(name, words.get("position." + name.replace(' ', '-'))))
                .toList();
    }

    public List<Option> tracts() {
        return java.util.Arrays.stream(Tract.values())
                .map(tract -> new Option(tract.key(), words.get("tract." + tract.key())))
                .toList();
    }

    public List<Option> views() {
        return java.util.Arrays.stream(View.values())
                .map(view -> new Option(view.key(), words.get("view." + view.key())))
                .toList();
    }

    public List<Option> sites() {
        return query.sites().stream()
                .map(site -> new Option(site.name(), site.name()))
                .toList();
    }

    public boolean is(Option option, String field) {
        return switch (field) {
            case "tract" -> query.tract().key().equals(option.value());
            case "site" -> query.site().map(Site::name).orElse("").equals(option.value());
            case "view" -> query.view().map(View::key).orElse("").equals(option.value());
            default -> throw new IllegalArgumentException("not a choice of the bench: " + field);
        };
    }

    /** Stature as typed, or as it counts. */
    public String stature() {
        String typed = query.typed().getOrDefault("stature", "");
        double perCm = inches() ? 2.54 : 1;
        return typed.isEmpty() ? Numbers.angle(Math.round(query.person().statureM() * 1000 / perCm) / 10.0) : typed;
    }

    public boolean inches() {
        return query.typed().getOrDefault("unit", "").equals("in");
    }

    public boolean left() {
        return query.side() == slipway.mechanics.body.Side.LEFT;
    }

    /** The angles of every position, for the script. */
    public String positionAngles() {
        var all = new LinkedHashMap<String, Map<String, Double>>();
        Position.all().forEach((name, position) -> all.put(name, angles(position.posture())));
        return JsonMapper.shared().writeValueAsString(all);
    }

    private static Map<String, Double> angles(Posture posture) {
        var angles = new LinkedHashMap<String, Double>();
        BenchReader.joints().forEach((name, field) -> {
            double deg = posture.angleDeg(field.joint(), field.limb());
            if (deg != 0) {
                angles.put(name, deg);
            }
        });
        return angles;
    }
}
