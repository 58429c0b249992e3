package slipway.reasoning.tolerance;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import slipway.mechanics.body.Posture;
import slipway.mechanics.body.Side;

/**
 * What the examination says about the tolerance.
 *
 * @param side the affected side
 * @param sites suspected places, at least one
 * @param rest the posture with the least symptoms, seen from the affected side
 * @param tests neural tests of both sides
 * @param comfortable positions without a rise of symptoms
 * @param symptomsAtRest whether the symptoms are there even in the rest posture, so that no onset can be counted from it
 * @param otherExplanations positive findings that would explain the symptoms without nerve, in words
 */
public record NeuralFindings(
        Side side,
        List<SuspectedSite> sites,
        Posture rest,
        List<NeuralTest> tests,
        List<ComfortablePosition> comfortable,
        boolean symptomsAtRest,
        List<String> otherExplanations) {
    public NeuralFindings {
        sites = List.copyOf(sites);
        tests = List.copyOf(tests);
        comfortable = List.copyOf(comfortable);
        otherExplanations = List.copyOf(otherExplanations);
        var mistakes = new ArrayList<String>();
        if (sites.isEmpty()) {
            mistakes.add("at least one suspected site is needed");
        }
        repeated(sites.stream().map(SuspectedSite::name).toList())
                .forEach(name -> mistakes.add("the suspected site " + name + " is given twice"));
        repeated(tests.stream().map(NeuralTest::id).toList())
                .forEach(id -> mistakes.add("the neural test " + id + " is given twice"));
        repeated(comfortable.stream().map(ComfortablePosition::name).toList())
                .forEach(name -> mistakes.add("the comfortable position " + name + " is given twice"));
        if (!mistakes.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", mistakes));
        }
    }

    private static List<String> repeated(List<String> names) {
        var seen = new HashSet<String>();
        return names.stream().filter(name -> !seen.add(name)).distinct().toList();
    }

    /** Tests of the affected side. */
    public List<NeuralTest> ownTests() {
        return tests.stream().filter(test -> test.side() == side).toList();
    }

    /** Whether raising the limb of the other side brought out the symptom of the affected one. */
    public boolean crossedPositive() {
        return tests.stream()
                .anyMatch(test -> test.side() != side && test.response() == SymptomResponse.CROSSED_SYMPTOM);
    }

    /** The share of the weight on places that the model knows, 0 to 1. */
    public double modelledShare() {
        double all = sites.stream().mapToDouble(SuspectedSite::weight).sum();
        double modelled = sites.stream()
                .filter(site -> site.site().isPresent())
                .mapToDouble(SuspectedSite::weight)
                .sum();
        return modelled / all;
    }
}
