package slipway.reasoning.locate;

import java.util.Set;

/**
 * Hard stops for the choice of the next test. No result of the model overrides them.
 *
 * @param emergencyQuestionsAnswered nothing is proposed before they are
 * @param highIrritability then no slump, sensitiser or overpressure, and at most two provocation tests a visit
 * @param provocationDone provocation tests already done in this visit
 * @param protectedJoint joint replacement, risk of fracture, or recent surgery: no load through the hip
 * @param skipped items that cannot be done today
 */
public record ExamLimits(
        boolean emergencyQuestionsAnswered,
        boolean highIrritability,
        int provocationDone,
        boolean protectedJoint,
        Set<String> skipped) {
    private static final int PROVOCATION_A_VISIT = 2;

    public ExamLimits {
        if (provocationDone < 0) {
            throw new IllegalArgumentException("provocation tests done cannot be " + provocationDone);
        }
        skipped = Set.copyOf(skipped);
    }

    /** Screened, not irritable, nothing protected. */
    public static ExamLimits none() {
        return new ExamLimits(true, false, 0, false, Set.of());
    }

    /** Why an item with these marks has to wait; empty text if it need not. */
    String stop(String item, Set<String> marks) {
        if (!emergencyQuestionsAnswered) {
            return "the emergency questions come first";
        }
        if (skipped.contains(item)) {
            return "cannot be done today";
        }
        if (protectedJoint && marks.contains("hipLoad")) {
            return "a joint, a bone or a recent operation is protected";
        }
        boolean strong = marks.contains("slump") || marks.contains("sensitiser") || marks.contains("overpressure");
        if (highIrritability && strong) {
            return "too provocative for high irritability";
        }
        boolean provocation = marks.contains("provocation");
        return highIrritability && provocation && provocationDone >= PROVOCATION_A_VISIT
                ? "two provocation tests a visit are enough with high irritability"
                : "";
    }
}
