package slipway.reasoning.locate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slipway.mechanics.body.Side;

/**
 * Sums the posterior exactly over site, way of being hit, and side, and over pairs of sites with coarser ways. Cost: number
 * of variants times number of findings for single lesions; the square of the number of undivided nerve variants times the
 * findings of a side for pairs.
 */
final class PosteriorEngine {
    private static final int SHOWN_PAIRS = 5;

    private final LocateModel model;
    private final double[] prior;
    private final Set<Side> sides;
    private final List<Integer> pairVariants = new ArrayList<>();

    /**
     * An engine for one prior.
     *
     * @param prior chances of the sites before the findings
     * @param sides sides on which the lesion can be, at least one
     */
    PosteriorEngine(LocateModel model, double[] prior, Set<Side> sides) {
        this.model = model;
        this.prior = prior;
        this.sides = sides;
        for (int v = 0; v < model.variants().size(); v++) {
            Variant variant = model.variants().get(v);
            LesionSite site = model.sites().get(variant.site());
            boolean whole = variant.motor() == 1
                    && variant.sensory() == 1
                    && !variant.hit().isEmpty();
            if (whole && !site.mimic() && !variant.bilateral()) {
                pairVariants.add(v);
            }
        }
    }

    /** The posterior of a case, with or without pairs of sites. */
    Posterior posterior(CaseEvidence evidence, Likelihoods likelihoods, boolean withPairs) {
        var side = new EnumMap<Side, SideLog>(Side.class);
        for (Side each : Side.values()) {
            side.put(each, SideLog.of(model, evidence, likelihoods, each));
        }
        double pairPrior = withPairs ? model.coefficients().value("pairs.prior") : 0;
        double[][] singles = singles(side, Math.log(1 - pairPrior));
        List<WeighedPair> pairs = withPairs ? pairs(evidence, likelihoods, side, pairPrior) : List.of();
        return normalised(singles, pairs);
    }

    /** The posterior of single lesions with one finding left out, as chances of the sites. */
    double[] withoutObservation(CaseEvidence evidence, Likelihoods likelihoods, Posterior all, int left) {
        double[] sites = new double[model.sites().size()];
        Side side = evidence.observations().get(left).finding().side();
        double total = 0;
        for (Side each : Side.values()) {
            double[] variants = all.variants()[each.ordinal()];
            for (int v = 0; v < variants.length; v++) {
                boolean touched = each == side || model.variants().get(v).bilateral();
                double chance = touched ? likelihoods.own(left, v) : likelihoods.base(left);
                double without = variants[v] / chance;
                sites[model.siteOfVariant()[v]] += without;
                total += without;
            }
        }
        for (int i = 0; i < sites.length; i++) {
            sites[i] /= total;
        }
        return sites;
    }

    private double[][] singles(Map<Side, SideLog> logs, double logSingle) {
        int count = model.variants().size();
        double[][] weights = new double[2][count];
        double oneSided = sides.size() == 1 ? Math.log(model.coefficients().value("bilateral.oneSided")) : 0;
        for (Side side : Side.values()) {
            SideLog own = get(logs, side);
            SideLog other = get(logs, side.opposite());
            for (int v = 0; v < count; v++) {
                Variant variant = model.variants().get(v);
                boolean possible = variant.bilateral() ? side == Side.LEFT : sides.contains(side);
                double before = logSingle + Math.log(prior[variant.site()] * variant.weight());
                double after = variant.bilateral()
                        ? own.lesion(v) + other.lesion(v) + oneSided
                        : own.lesion(v) + other.base() - Math.log(sides.size());
                weights[side.ordinal()][v] = possible ? before + after : Double.NEGATIVE_INFINITY;
            }
        }
        return weights;
    }

    private record WeighedPair(Side side, int first, int second, double log) {}

    private List<WeighedPair> pairs(
            CaseEvidence evidence, Likelihoods likelihoods, Map<Side, SideLog> logs, double pairPrior) {
        var pairs = new ArrayList<WeighedPair>();
        double[] weights = pairVariants.stream()
                .mapToDouble(v -> prior[model.variants().get(v).site()]
                        * model.variants().get(v).weight())
                .toArray();
        double normaliser = pairNormaliser(weights);
        for (Side side : sides) {
            double constant = Math.log(pairPrior / normaliser / sides.size())
                    + get(logs, side.opposite()).base();
            pairs.addAll(pairs(
                    side,
                    constant,
                    weights,
                    new PairTable(likelihoods, observationsOf(evidence, side), pairVariants, get(logs, side))));
        }
        return pairs;
    }

    private List<WeighedPair> pairs(Side side, double constant, double[] weights, PairTable table) {
        var pairs = new ArrayList<WeighedPair>();
        for (int i = 0; i < weights.length; i++) {
            int first = pairVariants.get(i);
            for (int j = i + 1; j < weights.length; j++) {
                int second = pairVariants.get(j);
                int site = model.siteOfVariant()[second];
                if (model.siteOfVariant()[first] != site) {
                    double sum =
                            constant + table.log(i, j, model.siteOfVariant()[first], site, weights[i] * weights[j]);
                    pairs.add(new WeighedPair(side, first, second, sum));
                }
            }
        }
        return pairs;
    }

    private double pairNormaliser(double[] weights) {
        double total = 0;
        for (int i = 0; i < weights.length; i++) {
            int site = model.siteOfVariant()[pairVariants.get(i)];
            for (int j = i + 1; j < weights.length; j++) {
                total += model.siteOfVariant()[pairVariants.get(j)] == site ? 0 : weights[i] * weights[j];
            }
        }
        return total;
    }

    private Posterior normalised(double[][] singles, List<WeighedPair> pairs) {
        double top = Double.NEGATIVE_INFINITY;
        for (double[] side : singles) {
            for (double log : side) {
                top = Math.max(top, log);
            }
        }
        for (WeighedPair pair : pairs) {
            top = Math.max(top, pair.log());
        }
        double total = 0;
        for (double[] side : singles) {
            for (int v = 0; v < side.length; v++) {
                side[v] = Math.exp(side[v] - top);
                total += side[v];
            }
        }
        double[][] pairSum = new double[model.sites().size()][model.sites().size()];
        double[] sideSum = new double[2];
        for (WeighedPair pair : pairs) {
            double weight = Math.exp(pair.log() - top);
            total += weight;
            sideSum[pair.side().ordinal()] += weight;
            pairSum[model.siteOfVariant()[pair.first()]][model.siteOfVariant()[pair.second()]] += weight;
        }
        return assembled(singles, pairSum, sideSum, total);
    }

    private Posterior assembled(double[][] singles, double[][] pairSum, double[] sideSum, double total) {
        double[] sites = new double[model.sites().size()];
        double pairChance = 0;
        var pairs = new ArrayList<Posterior.Pair>();
        for (int side = 0; side < 2; side++) {
            for (int v = 0; v < singles[side].length; v++) {
                singles[side][v] /= total;
                sites[model.siteOfVariant()[v]] += singles[side][v];
                if (!model.variants().get(v).bilateral()) {
                    sideSum[side] += singles[side][v] * total;
                }
            }
        }
        for (int i = 0; i < sites.length; i++) {
            for (int j = 0; j < sites.length; j++) {
                double chance = pairSum[i][j] / total;
                if (chance > 0) {
                    sites[i] += chance / 2;
                    sites[j] += chance / 2;
                    pairChance += chance;
                    pairs.add(new Posterior.Pair(i, j, chance));
                }
            }
        }
        pairs.sort(Comparator.comparingDouble(Posterior.Pair::chance).reversed());
        List<Posterior.Pair> best = List.copyOf(pairs.subList(0, Math.min(SHOWN_PAIRS, pairs.size())));
        return new Posterior(sites, sideSum[0] / total, sideSum[1] / total, singles, best, pairChance);
    }

    private static int[] observationsOf(CaseEvidence evidence, Side side) {
        return java.util.stream.IntStream.range(0, evidence.observations().size())
                .filter(o -> evidence.observations().get(o).finding().side() == side)
                .toArray();
    }

    private static SideLog get(Map<Side, SideLog> logs, Side side) {
        return java.util.Objects.requireNonNull(logs.get(side));
    }
}
