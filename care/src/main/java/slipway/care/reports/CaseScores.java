package slipway.care.reports;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.locate.LocateRequest;

/**
 * How well a ranking meets the confirmed sites of published cases.
 *
 * @param rows one per case with a confirmed site, in their order
 */
public record CaseScores(List<Row> rows) {
    /** Smallest chance that the log score counts with, so that one miss is bad but not endless. */
    private static final double SMALLEST = 1e-4;

    /**
     * One case.
     *
     * @param id as in the file
     * @param site confirmed site
     * @param tested number of tested findings (complaints do not count)
     * @param rank place of the confirmed site, from 1
     * @param chance chance that the ranking gave it
     * @param leading likeliest site
     * @param leadingChance its chance
     */
    public record Row(
            String id, String site, int tested, int rank, double chance, String leading, double leadingChance) {}

    /** One site under its name in lists of published cases, with its chance. */
    public record Chance(String site, double probability) {}

    public CaseScores {
        rows = List.copyOf(rows);
    }

    /** Scores cases by a ranking, best first. */
    public static CaseScores of(List<PublishedCase> cases, Function<PublishedCase, List<Chance>> ranking) {
        var rows = new ArrayList<Row>();
        for (PublishedCase each : cases) {
            each.diagnosisSite().ifPresent(site -> rows.add(row(each, site, ranking.apply(each))));
        }
        return new CaseScores(rows);
    }

    /** The question that a published case asks: its findings on the side of its lesion. */
    public static LocateRequest request(PublishedCase published) {
        return new LocateRequest(published.findings(), published.sides());
    }

    /** Only the cases with so many tested findings. */
    public CaseScores withTested(int atLeast) {
        return new CaseScores(
                rows.stream().filter(row -> row.tested() >= atLeast).toList());
    }

    /** Number of cases whose confirmed site is among the first so many. */
    public long among(int first) {
        return rows.stream().filter(row -> row.rank() <= first).count();
    }

    /** Mean natural log of the chance of the confirmed site. */
    public double meanLogScore() {
        return rows.stream()
                .mapToDouble(row -> Math.log(Math.max(SMALLEST, row.chance())))
                .average()
                .orElse(Double.NaN);
    }

    private static Row row(PublishedCase published, String site, List<Chance> ranking) {
        int rank = ranking.size() + 1;
        double chance = 0;
        for (int i = 0; i < ranking.size(); i++) {
            if (ranking.get(i).site().equals(site)) {
                rank = i + 1;
                chance = ranking.get(i).probability();
            }
        }
        int tested = (int) published.findings().stream()
                .map(Finding::kind)
                .filter(kind -> kind != FindingKind.SYMPTOM)
                .count();
        return new Row(
                published.id(),
                site,
                tested,
                rank,
                chance,
                ranking.get(0).site(),
                ranking.get(0).probability());
    }
}
