package slipway.web.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import slipway.care.bench.PostureReading;
import slipway.care.bench.Stance;
import slipway.documents.words.Words;
import slipway.exercises.yaml.NearestWord;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.pictures.figure.View;

/** Reads a question to the bench; everything that is wrong with it is told at once. */
final class BenchReader {
    /** Fields that are not joints. */
    private static final Set<String> PLAIN = Set.of(
            "position",
            "b-position",
            "tract",
            "site",
            "side",
            "view",
            "stature",
            "unit",
            "compare",
            "reset",
            "on",
            "draws",
            "ground",
            "width",
            "drag",
            "exercise",
            "episode",
            "motion-site");

    private static final double M_PER_CM = 0.01;
    private static final double M_PER_INCH = 0.0254;
    private static final int LONGEST = 60;

    private final Map<String, String> typed = new TreeMap<>();
    private final List<String> mistakes = new ArrayList<>();
    private final Words words;

    private BenchReader(Map<String, String[]> parameters, Words words) {
        this.words = words;
        parameters.forEach((name, values) -> {
            String value = values.length == 0 ? "" : values[values.length - 1].strip();
            typed.put(name, value.length() > LONGEST ? value.substring(0, LONGEST) : value);
        });
    }

    /** The question in the fields of a form or an address. */
    static BenchQuery read(Map<String, String[]> parameters, Words words) {
        return new BenchReader(parameters, words).read();
    }

    private BenchQuery read() {
        refuseStrangers();
        Tract tract =
                word("tract", Tract::find, keys(Tract.values(), Tract::key)).orElse(Tract.SCIATIC_TIBIAL);
        Optional<Site> site = word("site", Site::anywhere, Site.namesAnywhere());
        if (site.filter(found -> !PostureReading.onTract(found, tract)).isPresent()) {
            // The pathway was changed after the place was chosen: nothing to complain about.
            site = Optional.empty();
        }
        Side side = word("side", BenchReader::side, List.of("left", "right")).orElse(Side.RIGHT);
        Optional<View> view = word("view", View::find, keys(View.values(), View::key));
        Stance first = stance("");
        Optional<Stance> second = typed.getOrDefault("compare", "").equals("b")
                ? Optional.of(stance(BenchQuery.SECOND))
                : Optional.empty();
        return new BenchQuery(first, second, tract, site, side, view, person(), typed, mistakes);
    }

    private static Optional<Side> side(String text) {
        return Arrays.stream(Side.values())
                .filter(side -> side.name().toLowerCase(Locale.ROOT).equals(text))
                .findFirst();
    }

    private static <T> List<String> keys(T[] values, Function<T, String> key) {
        return Arrays.stream(values).map(key).toList();
    }

    /** The names of all joint fields of one posture, own leg first. */
    static Map<String, BodyField> joints() {
        var joints = new LinkedHashMap<String, BodyField>();
        for (Limb limb : Limb.values()) {
            for (Joint joint : BodyField.SHOWN) {
                if (limb == Limb.OWN || joint.paired()) {
                    var field = new BodyField(joint, limb);
                    joints.put(field.name(), field);
                }
            }
        }
        return joints;
    }

    private void refuseStrangers() {
        Set<String> known = new HashSet<>(PLAIN);
        joints().keySet().forEach(name -> {
            known.add(name);
            known.add(BenchQuery.SECOND + name);
        });
        typed.keySet().stream()
                .filter(name -> !known.contains(name))
                .limit(LONGEST)
                .forEach(name -> mistakes.add(NearestWord.complaint(
                        words.get("word.field"), name.length() > LONGEST ? name.substring(0, LONGEST) : name, known)));
    }

    private <T> Optional<T> word(String field, Function<String, Optional<T>> find, Iterable<String> known) {
        String text = typed.getOrDefault(field, "");
        Optional<T> found = text.isEmpty() ? Optional.empty() : find.apply(text);
        if (!text.isEmpty() && found.isEmpty()) {
            mistakes.add(words.get("mistake.word", field, text, String.join(", ", known)));
        }
        return found;
    }

    private Stance stance(String prefix) {
        Position position = word(
                        prefix + "position", Position::find, Position.all().keySet())
                .orElse(Position.get("lying"));
        Posture posture = position.posture();
        if (typed.getOrDefault("reset", "").equals(prefix.isEmpty() ? "a" : "b")) {
            return new Stance(position, posture);
        }
        for (BodyField field : joints().values()) {
            Optional<Double> angle = number(prefix + field.name());
            if (angle.isPresent()) {
                try {
                    posture = posture.with(field.joint(), field.limb(), angle.get());
                } catch (IllegalArgumentException e) {
                    mistakes.add((prefix.isEmpty() ? "" : words.get("posture.b") + ": ")
                            + (field.limb() == Limb.OTHER ? "other-" : "")
                            + e.getMessage());
                }
            }
        }
        return new Stance(position, posture);
    }

    private Optional<Double> number(String field) {
        String text = typed.getOrDefault(field, "");
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            // A comma is how most of the world writes the decimal point.
            return Optional.of(Double.parseDouble(text.replace(',', '.').replace('\u2212', '-')));
        } catch (NumberFormatException e) {
            mistakes.add(words.get("mistake.number", field, text));
            return Optional.empty();
        }
    }

    private Person person() {
        boolean inches = typed.getOrDefault("unit", "cm").equals("in");
        if (!Stream.of("cm", "in", "").toList().contains(typed.getOrDefault("unit", ""))) {
            mistakes.add(words.get("mistake.word", "unit", typed.getOrDefault("unit", ""), "cm, in"));
        }
        Optional<Double> stature = number("stature");
        try {
            return stature.map(value -> new Person(value * (inches ? M_PER_INCH : M_PER_CM)))
                    .orElse(Person.STANDARD);
        } catch (IllegalArgumentException e) {
            mistakes.add(words.get(inches ? "mistake.inches" : "mistake.cm", typed.getOrDefault("stature", "")));
            return Person.STANDARD;
        }
    }
}
