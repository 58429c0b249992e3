package slipway.reasoning.plan;

import java.util.List;
import java.util.Set;
import slipway.reasoning.basis.Reason;

/** What every plan warns of, and which reasons of a tolerance are warnings. */
final class Cautions {
    /** Rules of the tolerance that make its numbers count less. */
    private static final Set<String> WEAKENING = Set.of(
            "tolerance.not-modelled",
            "tolerance.conflict",
            "tolerance.few-draws",
            "tolerance.lower-bound-only",
            "tolerance.symptoms-at-rest");

    private Cautions() {}

    static List<String> always() {
        return List.of(
                "This is not a diagnosis and no substitute for the examination and judgement of a licensed clinician;"
                        + " local law and protocol come first.",
                "New numbness between the legs, genitals or around the anus, new trouble with bladder or bowel, or new"
                        + " weakness: stop and call the local emergency number.",
                "Loads come from a model fitted to published measurements of healthy nerves; they say what is expected,"
                        + " not what this nerve will do.");
    }

    static boolean weakens(Reason reason) {
        return WEAKENING.contains(reason.rule());
    }
}
