package slipway.reasoning.tolerance;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.NerveModel;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.basis.Coefficient;
import slipway.reasoning.basis.Reason;

/**
 * Estimates the tolerance by importance-weighted draws: each samples the nerve model, the site, the spread of the
 * sensitivity and the error of the onset, and is weighted by how well its tolerance explains all tests.
 */
public final class ToleranceEstimator {
    private final NeuralFindings findings;
    private final LoadDraws loads;
    private final double[] logPrior;
    private final List<Reason> reasons = new ArrayList<>();
    private final Set<String> dropped = new HashSet<>();

    private ToleranceEstimator(NeuralFindings findings, LoadDraws loads) {
        this.findings = findings;
        this.loads = loads;
        this.logPrior = SpreadPrior.logWeights(loads);
    }

    /** The tolerance of this person; the same input gives the same numbers. */
    public static ToleranceEstimate estimate(NerveModel model, NeuralFindings findings) {
        var reasons = new ArrayList<Reason>(NotModelled.reasons(findings));
        BehavesLikeNerve.Judgement nerve = BehavesLikeNerve.judge(findings);
        reasons.addAll(nerve.reasons());
        reasons.addAll(SideDifference.compare(findings));
        List<SuspectedSite> modelled = findings.sites().stream()
                .filter(site -> site.site().isPresent())
                .toList();
        if (modelled.isEmpty()) {
            return new ToleranceEstimate(
                    report(findings, Optional.empty(), List.of(), 0, nerve, reasons), Optional.empty());
        }
        List<Site> sites =
                modelled.stream().flatMap(site -> site.site().stream()).toList();
        double[] weights = modelled.stream().mapToDouble(SuspectedSite::weight).toArray();
        var loads = new LoadDraws(model, new Draws(model.draws(), sites, weights), findings.rest());
        findings.ownTests().forEach(test -> loads.prepare(TestLoad.postures(test)));
        var estimator = new ToleranceEstimator(findings, loads);
        AlphaReport alpha = estimator.run();
        reasons.addAll(estimator.reasons);
        double effective = Weighted.effective(loads.weights());
        return new ToleranceEstimate(
                report(findings, Optional.of(alpha), estimator.perSite(), effective, nerve, reasons),
                Optional.of(loads));
    }

    private static ToleranceReport report(
            NeuralFindings findings,
            Optional<AlphaReport> alpha,
            List<SiteTolerance> perSite,
            double effective,
            BehavesLikeNerve.Judgement nerve,
            List<Reason> reasons) {
        return new ToleranceReport(findings.rest().text(), alpha, perSite, effective, nerve.answer(), reasons);
    }

    private AlphaReport run() {
        double[] alpha = loads.draws().alpha();
        Interval prior = Weighted.interval(alpha, LogWeights.weights(logPrior, 1, loads.draws()));
        if (findings.symptomsAtRest()) {
            loads.settle(LogWeights.weights(logPrior, 1, loads.draws()), Map.of(), Map.of());
            reasons.add(Reason.finding(
                    "tolerance.symptoms-at-rest",
                    "The symptoms are there at rest, so no share of a tolerance can be given."));
            return new AlphaReport(prior, prior);
        }
        Map<TestFamily, FamilyFit> fits = fitWithoutConflict();
        for (TestFamily family : TestFamily.values()) {
            reasons.add(ToleranceWords.family(family, fits.get(family)));
        }
        return new AlphaReport(prior, Weighted.interval(alpha, loads.weights()));
    }

    /** Fits; while two results disagree, leaves out the one that asks for more tolerance and fits again. */
    private Map<TestFamily, FamilyFit> fitWithoutConflict() {
        while (true) {
            Map<TestFamily, FamilyFit> fits = fits();
            double[] log = logWeights(fits);
            double least = Math.min(ToleranceData.COEFFICIENTS.value("least-effective-draws"), loads.size());
            double power = LogWeights.powerKeeping(log, least, loads.draws());
            double[] weights = LogWeights.weights(log, power, loads.draws());
            Optional<Conflict> conflict = fits.values().stream()
                    .flatMap(fit -> Conflict.worst(fit, weights).stream())
                    .findFirst();
            if (conflict.isEmpty()) {
                settle(fits, weights, power);
                return fits;
            }
            dropped.add(conflict.get().dropped());
            reasons.add(conflict.get().reason());
        }
    }

    private void settle(Map<TestFamily, FamilyFit> fits, double[] weights, double power) {
        if (power < 1) {
            Coefficient least = ToleranceData.COEFFICIENTS.get("least-effective-draws");
            reasons.add(Reason.by(
                            least,
                            "tolerance.few-draws",
                            "Few draws explain all tests together; the weights were flattened, so the interval is wider.")
                    .with("power", power, ""));
        }
        var tolerance = new EnumMap<TestFamily, double[]>(TestFamily.class);
        fits.forEach((family, fit) -> tolerance.put(family, fit.tolerancePct()));
        var comfort = new EnumMap<TestFamily, List<Posture>>(TestFamily.class);
        for (TestFamily family : TestFamily.values()) {
            comfort.put(
                    family,
                    comfortable(family).stream()
                            .map(ComfortablePosition::posture)
                            .toList());
        }
        loads.settle(weights, tolerance, comfort);
    }

    private Map<TestFamily, FamilyFit> fits() {
        var fits = new EnumMap<TestFamily, FamilyFit>(TestFamily.class);
        for (TestFamily family : TestFamily.values()) {
            List<TestLoad> onsets = findings.ownTests().stream()
                    .filter(test -> counts(test, family) && test.response() == SymptomResponse.FAMILIAR_SYMPTOM)
                    .map(test -> TestLoad.of(test, loads))
                    .toList();
            List<LowerBound> bounds = bounds(family);
            if (!onsets.isEmpty() || !bounds.isEmpty()) {
                fits.put(family, new FamilyFit(onsets, bounds, loads.draws().column("onset " + family)));
            }
        }
        return fits;
    }

    private List<LowerBound> bounds(TestFamily family) {
        var bounds = new ArrayList<LowerBound>();
        findings.ownTests().stream()
                .filter(test -> counts(test, family) && test.response().censored())
                .forEach(test -> bounds.add(LowerBound.of(test, loads)));
        comfortable(family).forEach(position -> bounds.add(LowerBound.of(position, loads)));
        return bounds;
    }

    private List<ComfortablePosition> comfortable(TestFamily family) {
        return findings.comfortable().stream()
                .filter(position -> TestFamily.of(position.posture()) == family && !dropped.contains(position.name()))
                .toList();
    }

    private boolean counts(NeuralTest test, TestFamily family) {
        return test.family() == family && !dropped.contains(test.id());
    }

    /** Comfort in one family tells the other how the sensitivity is spread, but never lifts its tolerance. */
    private double[] logWeights(Map<TestFamily, FamilyFit> fits) {
        double[] log = logPrior.clone();
        fits.forEach((family, fit) -> {
            add(log, fit.logEvidence());
            if (!fit.lowerBoundOnly()) {
                for (TestFamily other : TestFamily.values()) {
                    if (other != family) {
                        comfortable(other)
                                .forEach(position ->
                                        add(log, fit.logEvidenceOfOtherFamily(LowerBound.of(position, loads))));
                    }
                }
            }
        });
        return log;
    }

    private static void add(double[] to, double[] more) {
        for (int i = 0; i < to.length; i++) {
            to[i] += more[i];
        }
    }

    /** In the family of the raised leg if that is known, else in the other. */
    private List<SiteTolerance> perSite() {
        if (findings.ownTests().isEmpty() && findings.comfortable().isEmpty()) {
            return List.of();
        }
        Optional<double[]> tolerance =
                loads.tolerancePct(TestFamily.RAISED_LEG).or(() -> loads.tolerancePct(TestFamily.SITTING));
        return tolerance
                .map(values -> loads.sites().stream()
                        // A site that the tests rule out in every draw has no tolerance to show.
                        .filter(site -> Weighted.effective(loads.weightsAt(site)) > 0)
                        .map(site -> {
                            Interval pct = Weighted.interval(values, loads.weightsAt(site));
                            return new SiteTolerance(site.name(), pct.median(), pct.low(), pct.high());
                        })
                        .toList())
                .orElse(List.of());
    }
}
