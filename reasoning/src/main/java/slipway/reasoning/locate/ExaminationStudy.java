package slipway.reasoning.locate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Result.Word;

/**
 * Simulated examinations: a site is drawn, a person answers from a model whose coefficients were drawn anew (so that the
 * examiner's model is wrong by as much as its intervals say), and questions are asked one after another. A study of the
 * rule, not clinical evidence.
 */
final class ExaminationStudy {
    private static final double REACHED = 0.8;

    private final Locator locator;
    private final LocateModel model;
    private final NextTests next;
    private final List<NextTests.Item> fixedOrder;

    /** How the next question is chosen. */
    enum Rule {
        MOST_TOLD,
        TEXTBOOK_ORDER
    }

    /**
     * Result of a study.
     *
     * @param people simulated people
     * @param reached people whose true site had at least 0.8 within the questions
     * @param wrong people for whom another site had at least 0.8
     * @param firstRight people whose true site led at the end
     */
    record Outcome(int people, int reached, int wrong, int firstRight) {}

    ExaminationStudy(Locator locator) {
        this.locator = locator;
        this.model = locator.model();
        this.next = new NextTests(locator);
        this.fixedOrder = order(model);
    }

    Outcome run(Rule rule, int people, int questions, long seed) {
        int reached = 0;
        int wrong = 0;
        int firstRight = 0;
        for (int person = 0; person < people; person++) {
            var random = new Random(seed + 7919L * person);
            int site = random.nextInt(model.sites().size());
            double[] chances = examined(rule, site, questions, random);
            int leading = leading(chances);
            firstRight += leading == site ? 1 : 0;
            reached += chances[site] >= REACHED ? 1 : 0;
            wrong += leading != site && chances[leading] >= REACHED ? 1 : 0;
        }
        return new Outcome(people, reached, wrong, firstRight);
    }

    /** Chances of the sites when a site is sure, or after the last question. */
    private double[] examined(Rule rule, int site, int questions, Random random) {
        int variant = drawnVariant(site, random);
        var truth = new CoefficientDraws(model.coefficients(), random.nextLong());
        Map<Latent.Nerve, Boolean> sensitive = new HashMap<>();
        for (Latent.Nerve nerve : Latent.Nerve.values()) {
            sensitive.put(
                    nerve, random.nextDouble() < nerve.sensitivity(model.sites().get(site)));
        }
        var findings = new ArrayList<Finding>();
        double[] chances = chances(findings);
        for (int q = 0; q < questions && chances[leading(chances)] < REACHED; q++) {
            Optional<NextTests.Item> item = chosen(rule, findings);
            if (item.isEmpty()) {
                break;
            }
            findings.add(answer(item.get(), variant, truth, sensitive, random));
            chances = chances(findings);
        }
        return chances;
    }

    private double[] chances(List<Finding> findings) {
        return locator.solvedSingles(new LocateRequest(findings, EnumSet.of(Side.LEFT)))
                .chances();
    }

    private Optional<NextTests.Item> chosen(Rule rule, List<Finding> findings) {
        List<String> done = findings.stream().map(Finding::target).toList();
        if (rule == Rule.TEXTBOOK_ORDER) {
            return fixedOrder.stream()
                    .filter(item -> !done.contains(item.name()))
                    .findFirst();
        }
        Locator.Solved solved = locator.solvedSingles(new LocateRequest(findings, EnumSet.of(Side.LEFT)));
        return NextTests.items(model).stream()
                .filter(item -> !done.contains(item.name()))
                .flatMap(item -> next.evaluated(item, solved).map(test -> new Rated(item, test)).stream())
                .max(Comparator.comparingDouble(rated -> rated.test().worth()))
                .map(Rated::item);
    }

    private record Rated(NextTests.Item item, NextTest test) {}

    private Finding answer(
            NextTests.Item item,
            int variant,
            CoefficientDraws truth,
            Map<Latent.Nerve, Boolean> sensitive,
            Random random) {
        boolean provocation = item.kind() == FindingKind.PROVOCATION;
        Finding normal = Finding.of(item.kind(), item.name(), Side.LEFT, provocation ? Word.NEGATIVE : Word.NORMAL);
        Finding abnormal = Finding.of(item.kind(), item.name(), Side.LEFT, provocation ? Word.POSITIVE : Word.REDUCED);
        CaseEvidence drawn = truth.draw(new ObservationReader(model).read(List.of(normal)));
        double chance;
        if (drawn.latents().isEmpty()) {
            chance = new Likelihoods(drawn.observations(), model.siteOfVariant()).own(0, variant);
        } else {
            Latent test = drawn.latents().get(0);
            chance = test.chance(Boolean.TRUE.equals(sensitive.get(test.nerve())));
        }
        return random.nextDouble() < chance ? normal : abnormal;
    }

    private int drawnVariant(int site, Random random) {
        double left = random.nextDouble();
        int last = -1;
        for (int v = 0; v < model.variants().size(); v++) {
            if (model.siteOfVariant()[v] == site) {
                left -= model.variants().get(v).weight();
                last = v;
                if (left < 0) {
                    return v;
                }
            }
        }
        return last;
    }

    private static int leading(double[] chances) {
        int best = 0;
        for (int i = 1; i < chances.length; i++) {
            best = chances[i] > chances[best] ? i : best;
        }
        return best;
    }

    private static List<NextTests.Item> order(LocateModel model) {
        var order = new ArrayList<NextTests.Item>();
        for (CSVRecord row : GraphReader.rows("locate/textbook-order.csv", model.region())) {
            FindingKind kind = FindingKind.find(row.get("kind")).orElseThrow();
            order.add(new NextTests.Item(kind, row.get("item"), 0, 0, java.util.Set.of()));
        }
        return order;
    }
}
