package slipway.care.reports;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import slipway.care.reports.CaseScores.Chance;
import slipway.reasoning.locate.LocateFit;

/**
 * Fits a few scales of the model to the published cases and the published sensitivities together, and reports what the fit is
 * worth on cases that it did not see. Random search over scales near 1 with a strong prior; run by hand, not by the tests.
 */
final class CalibrationFit {
    private static final int CANDIDATES = 60;
    private static final double PRIOR_SD = 0.2;
    private static final List<String> SCALES = List.of(
            "strength.gain",
            "reflex.gain",
            "sensation.gain",
            "strength.falseAlarm",
            "sensation.falseAlarm",
            "symptom.temper");

    private record Candidate(Map<String, Double> scales, CaseScores scores, double penalty) {}

    private CalibrationFit() {}

    public static void main(String[] args) throws IOException {
        List<PublishedCase> cases = PublishedCases.bundled();
        var random = new Random(11);
        var candidates = new ArrayList<Candidate>();
        for (int c = 0; c < CANDIDATES; c++) {
            var scales = new LinkedHashMap<String, Double>();
            double penalty = 0;
            for (String scale : SCALES) {
                double z = c == 0 ? 0 : random.nextGaussian();
                scales.put(scale, Math.exp(PRIOR_SD * z));
                penalty += z * z / 2;
            }
            candidates.add(candidate(scales, penalty, cases));
        }
        Candidate all = best(candidates, -1);
        System.out.println("defaults: " + text(candidates.get(0)));
        System.out.println("best on all cases: " + text(all));
        leaveOneOut(candidates);
    }

    private static Candidate candidate(Map<String, Double> scales, double penalty, List<PublishedCase> cases) {
        LocateFit fit = LocateFit.of(scales);
        CaseScores scores = CaseScores.of(
                cases,
                each -> fit.ranked(CaseScores.request(each)).entrySet().stream()
                        .map(entry -> new Chance(entry.getKey(), entry.getValue()))
                        .toList());
        return new Candidate(scales, scores, penalty + fit.misfit());
    }

    private static Candidate best(List<Candidate> candidates, int without) {
        Candidate best = candidates.get(0);
        for (Candidate candidate : candidates) {
            best = objective(candidate, without) > objective(best, without) ? candidate : best;
        }
        return best;
    }

    private static double objective(Candidate candidate, int without) {
        double sum = -candidate.penalty();
        for (int i = 0; i < candidate.scores().rows().size(); i++) {
            sum += i == without ? 0 : logScore(candidate.scores().rows().get(i));
        }
        return sum;
    }

    private static void leaveOneOut(List<Candidate> candidates) {
        var held = new ArrayList<CaseScores.Row>();
        for (int i = 0; i < candidates.get(0).scores().rows().size(); i++) {
            held.add(best(candidates, i).scores().rows().get(i));
        }
        CaseScores scores = new CaseScores(held);
        System.out.println("leave one out: " + text(scores));
        System.out.println("leave one out, two or more tested: " + text(scores.withTested(2)));
        double[] from = {0, 0.2, 0.4, 0.6, 0.8};
        for (double low : from) {
            var bin = held.stream()
                    .filter(row -> row.leadingChance() >= low && row.leadingChance() < low + 0.2 + (low == 0.8 ? 1 : 0))
                    .toList();
            long right = bin.stream().filter(row -> row.rank() == 1).count();
            double mean = bin.stream()
                    .mapToDouble(CaseScores.Row::leadingChance)
                    .average()
                    .orElse(Double.NaN);
            System.out.printf(
                    "leading chance %.1f-%.1f: n %d, mean chance %.2f, right %d%n",
                    low, low + 0.2, bin.size(), mean, right);
        }
    }

    private static double logScore(CaseScores.Row row) {
        return Math.log(Math.max(1e-4, row.chance()));
    }

    private static String text(Candidate candidate) {
        return candidate.scales() + " penalty " + candidate.penalty() + " " + text(candidate.scores())
                + "; two or more tested " + text(candidate.scores().withTested(2));
    }

    private static String text(CaseScores scores) {
        return "n %d first %d first three %d mean log score %.3f"
                .formatted(scores.rows().size(), scores.among(1), scores.among(3), scores.meanLogScore());
    }
}
