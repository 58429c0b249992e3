package slipway.reasoning;

import java.util.List;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Limb;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;
import slipway.reasoning.tolerance.ComfortablePosition;
import slipway.reasoning.tolerance.Movement;
import slipway.reasoning.tolerance.NeuralFindings;
import slipway.reasoning.tolerance.NeuralTest;
import slipway.reasoning.tolerance.RemoteChange;
import slipway.reasoning.tolerance.SuspectedSite;
import slipway.reasoning.tolerance.SymptomResponse;

/** Short ways to write the findings of invented people. */
public final class Findings {
    private Findings() {}

    public static NeuralTest raise(Side side, double onsetDeg, double ankleDeg) {
        return raise(side, onsetDeg, ankleDeg, SymptomResponse.FAMILIAR_SYMPTOM);
    }

    public static NeuralTest raise(Side side, double onsetDeg, double ankleDeg, SymptomResponse response) {
        return new NeuralTest(
                "leg raise, ankle %.0f, %s".formatted(ankleDeg, side),
                side,
                Position.get("lying").posture().with(Joint.ANKLE, ankleDeg),
                new Movement(Joint.HIP, Limb.OWN, 0, onsetDeg),
                response,
                RemoteChange.NOT_TESTED);
    }

    public static NeuralTest slump(Side side, double kneeDeg) {
        return new NeuralTest(
                "slump " + side,
                side,
                Position.get("slump").posture(),
                new Movement(Joint.KNEE, Limb.OWN, 90, kneeDeg),
                SymptomResponse.FAMILIAR_SYMPTOM,
                RemoteChange.NOT_TESTED);
    }

    public static NeuralTest with(NeuralTest test, RemoteChange remote) {
        return new NeuralTest(test.id(), test.side(), test.start(), test.movement(), test.response(), remote);
    }

    public static ComfortablePosition comfortable(String position) {
        return new ComfortablePosition(position, Position.get(position).posture());
    }

    /** Right side, rest lying with bent knees. */
    public static NeuralFindings right(
            List<SuspectedSite> sites, List<NeuralTest> tests, List<ComfortablePosition> comfortable) {
        Posture rest = Position.get("lying knees bent").posture();
        return new NeuralFindings(Side.RIGHT, sites, rest, tests, comfortable, false, List.of());
    }

    public static List<SuspectedSite> gluteal() {
        return List.of(SuspectedSite.named("deep gluteal space", 1));
    }
}
