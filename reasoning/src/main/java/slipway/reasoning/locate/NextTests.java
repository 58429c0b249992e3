package slipway.reasoning.locate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Pressed;
import slipway.reasoning.findings.Result.Word;
import slipway.reasoning.findings.Term;

/**
 * Which test would tell most next: for each item that was not tested, the expected drop of the entropy over the sites, in
 * proportion to its time and discomfort, within the hard stops. Single sites only; cost linear in items and variants.
 */
public final class NextTests {
    private static final int SHOWN = 3;

    private final Locator locator;
    private final LocateModel model;
    private final List<Item> items;

    /** An item that can be proposed. */
    record Item(FindingKind kind, String name, double minutes, double discomfort, Set<String> marks) {}

    /**
     * The proposal.
     *
     * @param best the best three, best first
     * @param withheld items that a hard stop keeps back, with the reason
     */
    public record Advice(List<NextTest> best, List<String> withheld) {
        public Advice {
            best = List.copyOf(best);
            withheld = List.copyOf(withheld);
        }
    }

    /** Proposals for the limb and setting of a locator. */
    public NextTests(Locator locator) {
        this.locator = locator;
        this.model = locator.model();
        this.items = items(model);
    }

    /** The best three tests to do next. */
    public Advice advise(LocateRequest request, ExamLimits limits) {
        return advise(request, limits, SHOWN);
    }

    /** The best tests to do next, at most so many; each is judged as if it were the only one. */
    public Advice advise(LocateRequest request, ExamLimits limits, int most) {
        Locator.Solved solved = locator.solvedSingles(request);
        var withheld = new ArrayList<String>();
        var ranked = new ArrayList<NextTest>();
        for (Item item : untested(request, solved)) {
            String stop = limits.stop(item.name(), item.marks());
            if (!stop.isEmpty()) {
                withheld.add("%s: %s".formatted(item.name(), stop));
                continue;
            }
            evaluated(item, solved).ifPresent(ranked::add);
        }
        ranked.sort(Comparator.comparingDouble(NextTest::worth).reversed());
        return new Advice(ranked.subList(0, Math.min(most, ranked.size())), withheld);
    }

    /** The items that were not tested on the side that is looked at. */
    private List<Item> untested(LocateRequest request, Locator.Solved solved) {
        var tested = new HashSet<String>();
        for (Finding finding : request.findings()) {
            if (finding.side() == side(solved)) {
                model.vocabulary()
                        .find(finding.kind(), finding.target())
                        .ifPresent(term -> tested.add(same(finding.kind(), term.key())));
            }
        }
        return items.stream()
                .filter(item -> !tested.contains(same(item.kind(), key(item))))
                .toList();
    }

    /** Tests that say the same: two names of one place tapped are one test. */
    private String same(FindingKind kind, String key) {
        String what = kind == FindingKind.PROVOCATION
                ? Pressed.parse(key)
                        .map(pressed ->
                                pressed.tapped() + " " + model.vocabulary().listSitesAt(pressed.place()))
                        .orElse(key)
                : key;
        return kind + " " + what;
    }

    private String key(Item item) {
        return model.vocabulary().find(item.kind(), item.name()).map(Term::key).orElse(item.name());
    }

    static Side side(Locator.Solved solved) {
        return solved.posterior().left() >= solved.posterior().right() ? Side.LEFT : Side.RIGHT;
    }

    /** What one item would tell; empty if the model cannot use it. */
    Optional<NextTest> evaluated(Item item, Locator.Solved solved) {
        Side side = side(solved);
        boolean provocation = item.kind() == FindingKind.PROVOCATION;
        Finding normal = Finding.of(item.kind(), item.name(), side, provocation ? Word.NEGATIVE : Word.NORMAL);
        CaseEvidence one = new ObservationReader(model).read(List.of(normal));
        double[] before = solved.posterior().sites();
        double[] negative;
        if (!one.latents().isEmpty()) {
            negative = latentNegative(one.latents().get(0), solved, side);
        } else if (!one.observations().isEmpty()) {
            negative = normalChance(one, solved, side);
        } else {
            return Optional.empty();
        }
        double chance = 0;
        for (double joint : negative) {
            chance += joint;
        }
        double[] ifNormal = new double[negative.length];
        double[] ifAbnormal = new double[negative.length];
        for (int i = 0; i < negative.length; i++) {
            ifNormal[i] = negative[i] / chance;
            ifAbnormal[i] = (before[i] - negative[i]) / (1 - chance);
        }
        double drop = Posterior.entropy(before)
                - chance * Posterior.entropy(ifNormal)
                - (1 - chance) * Posterior.entropy(ifAbnormal);
        double perDiscomfort = model.coefficients().value("next.discomfortMinutes");
        double effort =
                model.coefficients().value("next.fixedMinutes") + item.minutes() + perDiscomfort * item.discomfort();
        return Optional.of(new NextTest(
                item.kind(),
                item.name(),
                side,
                Math.max(0, drop) / Math.log(2),
                effort,
                List.of(
                        outcome(provocation ? "positive" : "abnormal", 1 - chance, before, ifAbnormal),
                        outcome(provocation ? "negative" : "normal", chance, before, ifNormal))));
    }

    /** Per site, its chance together with a normal result. */
    private double[] normalChance(CaseEvidence one, Locator.Solved solved, Side side) {
        var likelihoods = new Likelihoods(one.observations(), model.siteOfVariant());
        double[] joint = new double[model.sites().size()];
        for (Side each : Side.values()) {
            double[] variants = solved.posterior().variants()[each.ordinal()];
            for (int v = 0; v < variants.length; v++) {
                boolean touched = each == side || model.variants().get(v).bilateral();
                double chance = touched ? likelihoods.own(0, v) : likelihoods.base(0);
                joint[model.siteOfVariant()[v]] += variants[v] * chance;
            }
        }
        return joint;
    }

    private double[] latentNegative(Latent test, Locator.Solved solved, Side side) {
        double elsewhere = model.coefficients().value("mechanosensitivity.other");
        var known = LatentChances.of(solved.evidence().latents(), test.nerve(), side, elsewhere);
        double[] joint = new double[model.sites().size()];
        for (int i = 0; i < joint.length; i++) {
            double sensitive = known.sensitivity(model.sites().get(i));
            double negative = sensitive * test.chance(true) + (1 - sensitive) * test.chance(false);
            joint[i] = solved.posterior().sites()[i] * negative;
        }
        return joint;
    }

    private NextTest.Outcome outcome(String result, double chance, double[] before, double[] after) {
        Integer[] order = new Integer[after.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        java.util.Arrays.sort(order, Comparator.comparingDouble((Integer i) -> -after[i]));
        var shifts = new ArrayList<NextTest.Shift>();
        for (int k = 0; k < SHOWN; k++) {
            int site = order[k];
            shifts.add(new NextTest.Shift(model.sites().get(site).name(), before[site], after[site]));
        }
        return new NextTest.Outcome(result, chance, shifts);
    }

    static List<Item> items(LocateModel model) {
        var items = new ArrayList<Item>();
        for (CSVRecord row : GraphReader.rows("locate/items.csv", model.region())) {
            items.add(new Item(
                    FindingKind.find(row.get("kind")).orElseThrow(),
                    row.get("item"),
                    Double.parseDouble(row.get("minutes")),
                    Double.parseDouble(row.get("discomfort")),
                    Set.of()));
        }
        for (ProvocationTest test : model.tests().values()) {
            items.add(new Item(FindingKind.PROVOCATION, test.name(), test.minutes(), test.discomfort(), test.stops()));
        }
        return items;
    }
}
