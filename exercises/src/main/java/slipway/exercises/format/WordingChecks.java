package slipway.exercises.format;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.stream.IntStream;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Instructions;
import slipway.exercises.exercise.Language;
import slipway.exercises.exercise.MovingSide;
import slipway.exercises.exercise.Phrase;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.YamlDocument;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Posture;
import slipway.mechanics.evidence.BundledTable;

/** Holds the words of the name and the steps against the movement. Catches plain contradictions, not every one. */
final class WordingChecks {
    private static final List<WordingRule> RULES = load();

    private final YamlDocument document;
    private final Exercise exercise;
    private final List<Posture> postures;
    private final List<Mistake> mistakes = new ArrayList<>();

    private WordingChecks(YamlDocument document, Exercise exercise) {
        this.document = document;
        this.exercise = exercise;
        this.postures = exercise.movement().poses().stream()
                .map(pose -> pose.posture(java.util.Map.of()))
                .toList();
    }

    static List<Mistake> check(YamlDocument document, Exercise exercise) {
        var checks = new WordingChecks(document, exercise);
        checks.checkPhrase("/name", exercise.name(), Optional.empty());
        var steps = exercise.instructions().steps();
        for (int i = 0; i < steps.size(); i++) {
            Instructions.Step step = steps.get(i);
            checks.checkPhrase("/steps/" + i, step.text(), step.pose());
        }
        return checks.mistakes;
    }

    private void checkPhrase(String pointer, Phrase phrase, Optional<String> pose) {
        for (WordingRule rule : RULES) {
            String text = phrase.in(rule.language());
            Matcher found =
                    rule.phrase().matcher(text.toLowerCase(rule.language().locale()));
            if (found.find()) {
                wrongBecause(rule.claim(), pose, limbs(rule.language(), text))
                        .ifPresent(reason -> mistakes.add(document.mistake(
                                pointer + "/" + rule.language().code(),
                                "the words \"%s\" contradict the movement: %s".formatted(found.group(), reason))));
            }
        }
    }

    /** Which limbs the words may be about. */
    private List<Limb> limbs(Language language, String text) {
        String other = language == Language.EN
                ? "other|good|both|one|top|bottom|each"
                : "otr[ao]|san[ao]|ambas|las|los|cada|un[ao]";
        if (exercise.movement().side() == MovingSide.AFFECTED
                && !text.toLowerCase(language.locale()).matches("(?s).*\\b(" + other + ")\\b.*")) {
            return List.of(Limb.OWN);
        }
        return List.of(Limb.values());
    }

    private Optional<String> wrongBecause(WordingRule.Claim claim, Optional<String> pose, List<Limb> limbs) {
        if (claim instanceof WordingRule.SupportClaim support) {
            return support.supports().contains(exercise.setting().support())
                    ? Optional.empty()
                    : Optional.of(
                            "the support is " + exercise.setting().support().key());
        }
        if (claim instanceof WordingRule.PropClaim prop) {
            return exercise.setting().needs(prop.prop())
                    ? Optional.empty()
                    : Optional.of("there is no " + prop.prop().key() + " among the props");
        }
        List<Integer> places = places(pose);
        if (claim instanceof WordingRule.AngleClaim angle) {
            return limbs.stream().anyMatch(limb -> places.stream().anyMatch(at -> holds(angle, limb, at)))
                    ? Optional.empty()
                    : Optional.of(seen(angle.joint(), limbs, places));
        }
        var change = (WordingRule.ChangeClaim) claim;
        return limbs.stream().anyMatch(limb -> places.stream().anyMatch(at -> changes(change, limb, at)))
                ? Optional.empty()
                : Optional.of(seen(change.joint(), limbs, places(Optional.empty())));
    }

    private List<Integer> places(Optional<String> pose) {
        return IntStream.range(0, postures.size())
                .filter(at -> pose.isEmpty()
                        || exercise.movement().poses().get(at).id().equals(pose.orElseThrow()))
                .boxed()
                .toList();
    }

    private boolean holds(WordingRule.AngleClaim claim, Limb limb, int at) {
        double angle = postures.get(at).angleDeg(claim.joint(), limb);
        return claim.atMost() ? angle <= claim.degrees() : angle >= claim.degrees();
    }

    /** Coming to a pose from the one before, or, for the first, from the base position or the last pose. */
    private boolean changes(WordingRule.ChangeClaim claim, Limb limb, int at) {
        double here = postures.get(at).angleDeg(claim.joint(), limb);
        double before = postures.get(at == 0 ? postures.size() - 1 : at - 1).angleDeg(claim.joint(), limb);
        double base = exercise.setting().base().posture().angleDeg(claim.joint(), limb);
        boolean fromBefore = claim.rises() ? here > before : here < before;
        return fromBefore || (at == 0 && (claim.rises() ? here > base : here < base));
    }

    private String seen(Joint joint, List<Limb> limbs, List<Integer> places) {
        var angles = new ArrayList<String>();
        for (Limb limb : limbs) {
            places.forEach(at -> angles.add(String.valueOf(postures.get(at).angleDeg(joint, limb))));
        }
        return "the %s is at %s deg"
                .formatted(
                        joint.key(),
                        String.join(", ", angles.stream().distinct().toList()));
    }

    private static List<WordingRule> load() {
        String name = "/slipway/exercises/wording-rules.csv";
        try (var stream = WordingChecks.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException("the program was packaged without " + name);
            }
            String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
            return BundledTable.parseText(text).stream().map(WordingRule::of).toList();
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled table " + name + " cannot be read", e);
        }
    }
}
