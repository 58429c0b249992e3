package slipway.web.episode.locate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slipway.documents.words.Words;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Position;
import slipway.mechanics.nerve.Segment;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.pathway.PathwayModel;
import slipway.pictures.look.Palette;
import slipway.pictures.nerve.NerveStrip.Landmark;
import slipway.pictures.nerve.NerveStrip.SuspectedSite;
import slipway.pictures.nerve.SuspectedPlaces;
import slipway.reasoning.locate.Location;
import slipway.web.episode.VisitPictures.Both;

/** The pathway of the leg drawn straight with the located places; places beside this pathway are told in words. */
final class SitePicture {
    private static final int WIDTH = 760;

    /** A place below this is not drawn: it would be a stem of no height with a label. */
    private static final double DRAWN_FROM = 0.02;

    /** Where places and landmarks lie hardly depends on stature, so that one body serves for all. */
    private static final PathwayModel MODEL =
            new PathwayModel(Person.STANDARD, FittedParameters.bundled().standardDraws());

    private static final double LENGTH_M =
            MODEL.profile(Position.get("lying").posture(), Tract.SCIATIC_TIBIAL).lengthM();

    private final Words words;

    SitePicture(Words words) {
        this.words = words;
    }

    Both of(Location location) {
        var sites = new ArrayList<SuspectedSite>();
        for (Location.RankedSite ranked : location.sites()) {
            if (ranked.probability() >= DRAWN_FROM) {
                on(ranked).ifPresent(sites::add);
            }
        }
        sites.sort(Comparator.comparingDouble(SuspectedSite::position));
        return new Both(svg(sites, Palette.PAPER, "places"), svg(sites, Palette.DARK, "places-dark"));
    }

    /** The first modelled place that a lesion site stands for. */
    private static java.util.Optional<SuspectedSite> on(Location.RankedSite ranked) {
        return Site.all().values().stream()
                .filter(site -> site.locateNames().contains(ranked.site().name()))
                .findFirst()
                .map(site -> new SuspectedSite(
                        Math.min(1, MODEL.arcM(site) / LENGTH_M),
                        ranked.probability(),
                        ranked.site().label()));
    }

    private String svg(List<SuspectedSite> sites, Palette palette, String prefix) {
        String shows = sites.isEmpty()
                ? words.get("picture.none")
                : String.join(
                        "; ",
                        sites.stream()
                                .map(site -> site.label() + " " + Math.round(100 * site.probability()) + " %")
                                .toList());
        return SuspectedPlaces.svg(
                landmarks(),
                sites,
                palette,
                WIDTH,
                new slipway.pictures.svg.Words(prefix, words.get("picture"), shows));
    }

    private List<Landmark> landmarks() {
        var landmarks = new ArrayList<Landmark>();
        for (Segment segment : Segment.values()) {
            landmarks.add(new Landmark(MODEL.startM(segment) / LENGTH_M, words.get("landmark." + segment.key())));
        }
        return landmarks;
    }
}
