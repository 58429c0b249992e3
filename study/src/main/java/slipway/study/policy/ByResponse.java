package slipway.study.policy;

import java.util.List;
import slipway.reasoning.response.estimate.EstimateSettings;

/** The program's way of dosing, whole or with parts left out. */
record ByResponse(String id, String words, Mode mode) implements Policy {
    private static final double LOW_LIMIT = 0.1;
    private static final double HIGH_LIMIT = 0.3;

    /** The program first, then what is left of it. */
    static List<Policy> all() {
        double limit = EstimateSettings.LIMIT;
        return List.of(
                new ByResponse(
                        "program",
                        "The program: rules of response on every report, the estimate chooses within them.",
                        new Mode(true, true, limit)),
                new ByResponse(
                        "rules", "The ladder by rule alone, without the estimate.", new Mode(false, true, limit)),
                new ByResponse(
                        "estimate",
                        "The estimate without the rules that limit steps; those that ease and stop hold.",
                        new Mode(true, false, limit)),
                new ByResponse("program-0.1", "The program with a limit of 0.1.", new Mode(true, true, LOW_LIMIT)),
                new ByResponse("program-0.3", "The program with a limit of 0.3.", new Mode(true, true, HIGH_LIMIT)));
    }

    @Override
    public boolean readsDaily() {
        return true;
    }

    @Override
    public Course admit(Intake intake) {
        return new ResponseCourse(intake, mode);
    }
}
