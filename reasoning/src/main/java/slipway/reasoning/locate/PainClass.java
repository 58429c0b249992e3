package slipway.reasoning.locate;

import java.util.List;
import java.util.OptionalInt;
import org.apache.commons.csv.CSVRecord;
import slipway.reasoning.ReasoningData;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;

/**
 * Class of nerve-related leg pain, tried in this order: a pain scale that speaks for central sensitisation, then any loss of
 * strength, reflex or feeling, then a positive neural test, then none of them. Source: Schäfer, Hall and Briffa.
 */
public enum PainClass {
    NEUROPATHIC_SENSITISATION,
    DENERVATION,
    SENSITISED_NERVE,
    MUSCULOSKELETAL;

    /** Score of the LANSS from which neuropathic sensitisation is taken (Schäfer; cut-off of the scale). */
    private static final int LANSS_FROM = 12;

    /**
     * What was published on the response to neural mobilisation in a class: uncontrolled, and null trials stand beside it.
     *
     * @param share share of people who responded, 0 to 1
     * @param words plain name of the class
     */
    public record Expectation(double share, String words) {}

    /**
     * The class of a person.
     *
     * @param lanss score of the LANSS pain scale; without it the first class cannot be found, and the next ones are tried
     */
    public static PainClass of(OptionalInt lanss, List<Finding> findings) {
        if (lanss.orElse(0) >= LANSS_FROM) {
            return NEUROPATHIC_SENSITISATION;
        }
        if (findings.stream().anyMatch(PainClass::isLoss)) {
            return DENERVATION;
        }
        return findings.stream().anyMatch(PainClass::isNeuralTest) ? SENSITISED_NERVE : MUSCULOSKELETAL;
    }

    /** What was published for this class. */
    public Expectation expectation() {
        for (CSVRecord row : ReasoningData.table("locate/pain-classes.csv")) {
            if (row.get("class").equals(name())) {
                return new Expectation(Double.parseDouble(row.get("response")), row.get("en"));
            }
        }
        throw new IllegalStateException("pain-classes.csv has no row " + name());
    }

    private static boolean isLoss(Finding finding) {
        boolean tested = finding.kind() == FindingKind.STRENGTH
                || finding.kind() == FindingKind.REFLEX
                || finding.kind() == FindingKind.SENSATION;
        return tested
                && finding.result().abnormal()
                && finding.result() != slipway.reasoning.findings.Result.Word.INCREASED;
    }

    private static boolean isNeuralTest(Finding finding) {
        return finding.kind() == FindingKind.PROVOCATION
                && finding.result().abnormal()
                && Latent.isNeuralTest(finding.target());
    }
}
