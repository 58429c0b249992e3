package slipway.web.api;

import slipway.exercises.yaml.MistakesException;
import tools.jackson.databind.node.ObjectNode;

/** What a fuzzer calls (Jazzer finds the method by its name): a report with an id, or a refusal that names why. */
public final class ReportBodyFuzzer {
    private ReportBodyFuzzer() {}

    public static void fuzzerTestOneInput(byte[] data) {
        try {
            ObjectNode report = ReportBody.read(data);
            if (!report.path("checkin_id").asString("").matches("[A-Za-z0-9-]{8,64}")) {
                throw new IllegalStateException("a report without an id was taken");
            }
        } catch (MistakesException e) {
            if (e.mistakes().isEmpty()) {
                throw new IllegalStateException("refused without a reason", e);
            }
        } catch (ProblemException e) {
            if (String.valueOf(e.getMessage()).isBlank()) {
                throw new IllegalStateException("refused without a reason", e);
            }
        }
    }
}
