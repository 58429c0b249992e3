package slipway.reasoning.locate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingChecks;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.locate.Location.Interval;
import slipway.reasoning.locate.Location.Pair;
import slipway.reasoning.locate.Location.Pairs;
import slipway.reasoning.locate.Location.RankedSite;
import slipway.reasoning.locate.Location.ScoredSite;
import slipway.reasoning.locate.Location.SideChance;
import slipway.reasoning.screening.Region;

/**
 * Locates the trouble along the nervous pathway from the findings of an examination. Pure: the same request gives the same
 * answer, whatever the order of its findings.
 */
public final class Locator {
    private static final long SEED = 20_260_101L;
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;

    private final LocateModel model;
    private final SitePrior prior;

    Locator(LocateModel model, SitePrior prior) {
        this.model = model;
        this.prior = prior;
    }

    /** The locator of a limb for one setting. */
    public static Locator load(Region region, SitePrior prior) {
        if (region == Region.ANY) {
            throw new IllegalArgumentException("locating needs a limb, leg or arm");
        }
        return new Locator(LocateModel.load(region, prior.severities()), prior);
    }

    /**
     * The ranked sites with their basis.
     *
     * @throws IllegalArgumentException naming contradictory findings
     */
    public Location locate(LocateRequest request) {
        Solved solved = checked(request);
        return answered(solved, intervals(solved));
    }

    /** The same without drawing the coefficients: every interval is the estimate itself. For many cases in a row. */
    public Location rank(LocateRequest request) {
        Solved solved = checked(request);
        Interval[] points = Arrays.stream(solved.chances())
                .mapToObj(chance -> new Interval(chance, chance))
                .toArray(Interval[]::new);
        return answered(solved, points);
    }

    private Solved checked(LocateRequest request) {
        List<String> contradictions = FindingChecks.contradictions(request.findings(), model.vocabulary());
        if (!contradictions.isEmpty()) {
            throw new IllegalArgumentException(String.join("; ", contradictions));
        }
        return solved(request);
    }

    /** The chances alone, without intervals and basis: what many cases in a row need least time for. */
    double[] chances(LocateRequest request) {
        return solved(request).chances();
    }

    /** A case with its posterior. */
    Solved solved(LocateRequest request) {
        return solved(request, true);
    }

    /** A case with its posterior over single lesions. */
    Solved solvedSingles(LocateRequest request) {
        return solved(request, false);
    }

    private Solved solved(LocateRequest request, boolean withPairs) {
        CaseEvidence evidence = new ObservationReader(model).read(sorted(request.findings()));
        double[] chances = prior.chances(model.sites());
        var engine = new PosteriorEngine(model, chances, request.sides());
        var likelihoods = new Likelihoods(evidence.observations(), model.siteOfVariant());
        Posterior posterior = engine.posterior(evidence, likelihoods, withPairs);
        double[] humble = humble(posterior.sites(), chances, evidence);
        return new Solved(evidence, chances, engine, likelihoods, posterior, humble);
    }

    record Solved(
            CaseEvidence evidence,
            double[] prior,
            PosteriorEngine engine,
            Likelihoods likelihoods,
            Posterior posterior,
            double[] chances) {}

    LocateModel model() {
        return model;
    }

    /** Sums in floating point depend on the order, so that the order is made the same first. */
    private static List<Finding> sorted(List<Finding> findings) {
        return findings.stream()
                .sorted(Comparator.comparing(Finding::kind)
                        .thenComparing(Finding::target)
                        .thenComparing(finding -> finding.result().text()))
                .toList();
    }

    private double[] humble(double[] posterior, double[] prior, CaseEvidence evidence) {
        return telling(evidence)
                ? posterior
                : TellingCap.capped(
                        posterior, prior, model.sites(), model.coefficients().value("telling.cap"));
    }

    /** Whether anything tested was abnormal. */
    static boolean telling(CaseEvidence evidence) {
        return evidence.latents().stream().anyMatch(Latent::positive)
                || evidence.observations().stream()
                        .map(Observation::finding)
                        .anyMatch(finding -> finding.kind() != FindingKind.SYMPTOM
                                && finding.result().abnormal());
    }

    private Location answered(Solved solved, Interval[] intervals) {
        Basis basis = new Basis(model, solved);
        List<RankedSite> ranked = IntStream.range(0, model.sites().size())
                .mapToObj(
                        i -> new RankedSite(model.sites().get(i), solved.chances()[i], intervals[i], basis.reasons(i)))
                .sorted(Comparator.comparingDouble(RankedSite::probability).reversed())
                .toList();
        Posterior posterior = solved.posterior();
        List<Pair> pairs = posterior.pairs().stream()
                .map(pair -> new Pair(name(pair.first()), name(pair.second()), pair.chance()))
                .toList();
        List<Finding> unexplained = basis.unexplained();
        return new Location(
                ranked,
                scored(ranked),
                new Pairs(posterior.pairChance(), pairs),
                new SideChance(posterior.left(), posterior.right()),
                unexplained,
                solved.evidence().notUsed(),
                new VerdictWriter(model).write(ranked, solved, unexplained));
    }

    private Interval[] intervals(Solved solved) {
        int draws = (int) model.coefficients().value("draws");
        var source = new CoefficientDraws(model.coefficients(), SEED);
        double[][] drawn = new double[model.sites().size()][draws];
        for (int d = 0; d < draws; d++) {
            CaseEvidence evidence = source.draw(solved.evidence());
            var likelihoods = new Likelihoods(evidence.observations(), model.siteOfVariant());
            double[] sites =
                    solved.engine().posterior(evidence, likelihoods, false).sites();
            double[] chances = humble(sites, solved.prior(), evidence);
            for (int i = 0; i < chances.length; i++) {
                drawn[i][d] = chances[i];
            }
        }
        var intervals = new Interval[drawn.length];
        for (int i = 0; i < drawn.length; i++) {
            Arrays.sort(drawn[i]);
            // The estimate itself is one draw, so that it never lies outside its interval.
            double low = Math.min(solved.chances()[i], drawn[i][(int) (LOW * (draws - 1))]);
            double high = Math.max(solved.chances()[i], drawn[i][(int) Math.ceil(HIGH * (draws - 1))]);
            intervals[i] = new Interval(low, high);
        }
        return intervals;
    }

    private String name(int site) {
        return model.sites().get(site).name();
    }

    private static List<ScoredSite> scored(List<RankedSite> ranked) {
        Map<String, Double> sums = new LinkedHashMap<>();
        ranked.forEach(site -> sums.merge(site.site().scored(), site.probability(), Double::sum));
        var scored = new ArrayList<ScoredSite>();
        sums.forEach((name, chance) -> scored.add(new ScoredSite(name, chance)));
        scored.sort(Comparator.comparingDouble(ScoredSite::probability).reversed());
        return scored;
    }
}
