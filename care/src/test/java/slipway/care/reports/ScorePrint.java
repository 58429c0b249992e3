package slipway.care.reports;

import java.io.IOException;
import java.util.List;
import slipway.care.reports.CaseScores.Chance;
import slipway.reasoning.locate.Location;
import slipway.reasoning.locate.Locator;
import slipway.reasoning.locate.SitePrior;
import slipway.reasoning.screening.Region;

/** Prints the scores of the bundled cases; not a test. */
final class ScorePrint {
    private ScorePrint() {}

    public static void main(String[] args) throws IOException {
        Locator locator = Locator.load(Region.LEG, SitePrior.load(SitePrior.SCORING));
        CaseScores scores =
                CaseScores.of(cases(args), published -> chances(locator.locate(CaseScores.request(published))));
        for (CaseScores.Row row : scores.rows()) {
            System.out.printf(
                    "%-6s %-28s rank %2d p %.3f | tested %d, leading %s %.3f%n",
                    row.id(), row.site(), row.rank(), row.chance(), row.tested(), row.leading(), row.leadingChance());
        }
        print("all", scores);
        print("two or more tested", scores.withTested(2));
    }

    private static List<PublishedCase> cases(String[] args) throws IOException {
        if (args.length == 0) {
            return PublishedCases.bundled();
        }
        try (var file = java.nio.file.Files.newInputStream(java.nio.file.Path.of(args[0]))) {
            return PublishedCases.readAll(args[0], file);
        }
    }

    private static void print(String name, CaseScores scores) {
        System.out.printf(
                "%s: n %d first %d first three %d mean log score %.3f%n",
                name, scores.rows().size(), scores.among(1), scores.among(3), scores.meanLogScore());
    }

    private static List<Chance> chances(Location location) {
        return location.scored().stream()
                .map(site -> new Chance(site.site(), site.probability()))
                .toList();
    }
}
