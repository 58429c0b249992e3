package slipway.care.visit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slipway.care.CareData;
import slipway.care.casefile.SiteWeight;
import slipway.exercises.exercise.Indication;
import slipway.mechanics.nerve.Site;

/**
 * The likeliest of the suspected places that the nerve model knows, and what exercises call it.
 *
 * @param indication what the files of exercises name when they suit it
 * @param words the same in a sentence, without an article
 */
record LikeliestPlace(Site site, Indication indication, String words) {
    /** Of these places; empty if none is modelled. */
    static Optional<LikeliestPlace> of(List<SiteWeight> sites) {
        return sites.stream()
                .filter(weight -> weight.site().isPresent())
                .max(Comparator.comparingDouble(SiteWeight::probability))
                .flatMap(SiteWeight::site)
                .flatMap(LikeliestPlace::named);
    }

    private static Optional<LikeliestPlace> named(Site site) {
        return CareData.table("places.csv").stream()
                .filter(row -> row.get("site").equals(site.name()))
                .findFirst()
                .map(row -> new LikeliestPlace(
                        site,
                        Indication.find(row.get("indication"))
                                .orElseThrow(() -> new IllegalStateException(
                                        "places.csv: unknown indication " + row.get("indication"))),
                        row.get("words")));
    }
}
