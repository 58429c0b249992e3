package slipway.reasoning.locate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import slipway.reasoning.ReasoningData;
import slipway.reasoning.findings.Weights;

/**
 * A provocation test or sign with its accuracy.
 *
 * @param name as in the vocabulary
 * @param latent the nerve whose mechanosensitivity it measures; empty for a test with its own accuracy
 * @param sites sites that make it positive, with their share of the sensitivity
 * @param accuracy its accuracy; without meaning for a latent test
 * @param minutes time that it takes
 * @param discomfort 0 none to 3
 * @param stops reasons for which it may have to wait
 * @param mark where it comes from
 */
record ProvocationTest(
        String name,
        Optional<Latent.Nerve> latent,
        Map<String, Double> sites,
        Accuracy accuracy,
        double minutes,
        double discomfort,
        Set<String> stops,
        String mark) {
    ProvocationTest {
        sites = Map.copyOf(sites);
        stops = Set.copyOf(stops);
    }

    static Map<String, ProvocationTest> load(LocateCoefficients coefficients) {
        var tests = new LinkedHashMap<String, ProvocationTest>();
        for (CSVRecord row : ReasoningData.table("locate/tests.csv")) {
            tests.put(row.get("test"), read(row, coefficients));
        }
        return tests;
    }

    private static ProvocationTest read(CSVRecord row, LocateCoefficients coefficients) {
        Optional<Latent.Nerve> latent = row.get("latent").isBlank()
                ? Optional.empty()
                : Optional.of(Latent.Nerve.valueOf(row.get("latent").toUpperCase(java.util.Locale.ROOT)));
        return new ProvocationTest(
                row.get("test"),
                latent,
                Weights.parse(row.get("sites")),
                latent.isPresent() ? Accuracy.NONE : accuracy(row, coefficients),
                Double.parseDouble(row.get("minutes")),
                Double.parseDouble(row.get("discomfort")),
                Set.copyOf(words(row.get("stops"))),
                row.get("mark"));
    }

    private static Accuracy accuracy(CSVRecord row, LocateCoefficients coefficients) {
        double cap = coefficients.value(
                row.get("design").equals("case-control") ? "likelihoodRatio.cap.caseControl" : "likelihoodRatio.cap");
        double diseased = Double.parseDouble(row.get("diseased"));
        double healthy = Double.parseDouble(row.get("healthy"));
        if (diseased > 0) {
            return Accuracy.ofCounts(
                    new Accuracy.Counts(
                            Double.parseDouble(row.get("tp")), diseased, Double.parseDouble(row.get("tn")), healthy),
                    cap);
        }
        double people = coefficients.value("guess.people");
        double sens = Double.parseDouble(row.get("sens"));
        double spec = Double.parseDouble(row.get("spec"));
        return Accuracy.ofCounts(new Accuracy.Counts(sens * people, people, spec * people, people), cap);
    }

    private static List<String> words(String text) {
        return text.isBlank() ? List.of() : List.of(text.strip().split("\\s+"));
    }
}
