package slipway.care.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.RemoteMovement;
import slipway.care.casefile.SiteWeight;
import slipway.care.casefile.TestEntry;
import slipway.care.casefile.TestKind;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Side;
import slipway.reasoning.tolerance.ComfortablePosition;
import slipway.reasoning.tolerance.Movement;
import slipway.reasoning.tolerance.NeuralFindings;
import slipway.reasoning.tolerance.NeuralTest;
import slipway.reasoning.tolerance.RemoteChange;
import slipway.reasoning.tolerance.SuspectedSite;
import slipway.reasoning.tolerance.SymptomResponse;

/** What a case says about the tolerance, in the words of the estimate. */
final class NeuralMapping {
    private static final String STRETCH = "stretch";

    private NeuralMapping() {}

    static NeuralFindings of(CaseFile file, List<SiteWeight> sites) {
        return new NeuralFindings(
                file.episode().side(),
                sites.stream()
                        .map(site -> new SuspectedSite(site.name(), site.probability(), site.site()))
                        .toList(),
                file.examination().rest().posture(),
                tests(file),
                file.examination().comfortable().stream()
                        .map(position -> new ComfortablePosition(position.name(), position.posture()))
                        .toList(),
                // The file asks for the pain that is left in the most comfortable posture.
                file.examination().irritability().restPain().orElse(0) > 0,
                otherExplanations(file.sites()));
    }

    private static List<NeuralTest> tests(CaseFile file) {
        var tests = new ArrayList<NeuralTest>();
        for (TestEntry entry : file.examination().tests()) {
            if (entry.test().modelled()) {
                test(entry, file.episode().side()).ifPresent(tests::add);
            }
        }
        return tests;
    }

    /** A test that ended where it began says nothing about a load. */
    private static Optional<NeuralTest> test(TestEntry entry, Side affected) {
        var joint = entry.test().joint();
        double fromDeg = entry.start().angleDeg(joint);
        if (fromDeg == entry.reachedDeg()) {
            return Optional.empty();
        }
        boolean crossed = entry.test().name().equals(TestKind.CROSSED);
        return Optional.of(new NeuralTest(
                name(entry),
                crossed ? affected.opposite() : entry.side(),
                entry.start(),
                new Movement(joint, Limb.OWN, fromDeg, entry.reachedDeg()),
                response(entry, crossed),
                remote(entry.remoteMovements())));
    }

    /** The test by name, with the joints that were not where it usually starts: two raises may differ in the ankle. */
    static String name(TestEntry entry) {
        var differs = new ArrayList<String>();
        for (Joint joint : Joint.values()) {
            double angleDeg = entry.start().angleDeg(joint);
            if (joint != entry.test().joint()
                    && angleDeg != entry.test().start().angleDeg(joint)) {
                differs.add("%s %.0f".formatted(joint.key(), angleDeg));
            }
        }
        return entry.words() + (differs.isEmpty() ? "" : ", " + String.join(", ", differs));
    }

    private static SymptomResponse response(TestEntry entry, boolean crossed) {
        if (!entry.changed()) {
            return SymptomResponse.NONE;
        }
        boolean familiar = entry.felt()
                .map(felt -> felt.familiar() && !felt.kind().equals(STRETCH))
                .orElse(true);
        if (!familiar) {
            return SymptomResponse.STRETCH_ONLY;
        }
        return crossed ? SymptomResponse.CROSSED_SYMPTOM : SymptomResponse.FAMILIAR_SYMPTOM;
    }

    /** Only a movement with the limb held tells nerve from muscle. */
    private static RemoteChange remote(List<RemoteMovement> movements) {
        List<RemoteMovement> held =
                movements.stream().filter(RemoteMovement::limbHeld).toList();
        if (held.isEmpty()) {
            return RemoteChange.NOT_TESTED;
        }
        boolean changed = held.stream().anyMatch(m -> m.change() != RemoteMovement.Change.NONE);
        return changed ? RemoteChange.CHANGED : RemoteChange.UNCHANGED;
    }

    private static List<String> otherExplanations(List<SiteWeight> sites) {
        return sites.stream()
                .filter(site -> site.site().isEmpty())
                .map(site -> site.name() + " (" + site.reason() + ")")
                .toList();
    }
}
