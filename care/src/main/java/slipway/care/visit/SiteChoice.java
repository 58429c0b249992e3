package slipway.care.visit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.SiteWeight;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.basis.Coefficients;
import slipway.reasoning.locate.LocateRequest;
import slipway.reasoning.locate.Location;
import slipway.reasoning.locate.Locator;
import slipway.reasoning.locate.SitePrior;
import slipway.reasoning.screening.Region;

/** Which places the plan rests on: the therapist's own where the case names any, otherwise those located. */
public final class SiteChoice {
    private static final Coefficients DATA = Coefficients.load("visit.csv");

    private SiteChoice() {}

    static List<SiteWeight> of(CaseFile file) {
        return file.sites().isEmpty() ? located(file) : file.sites();
    }

    private static List<SiteWeight> located(CaseFile file) {
        return places(locator()
                .locate(new LocateRequest(
                        file.examination().findings(), EnumSet.of(file.episode().side()))));
    }

    /** The locator that a visit uses. */
    public static Locator locator() {
        return Locator.load(Region.LEG, SitePrior.load(SitePrior.OUTPATIENT));
    }

    /**
     * The places that a plan would rest on, likeliest first; their weights sum to less than 1 by what is left out. Places
     * that are too unlikely to matter are left out, so that they do not spread the plan thin.
     */
    public static List<SiteWeight> places(Location location) {
        var sites = new ArrayList<SiteWeight>();
        for (Location.RankedSite ranked : location.sites()) {
            if (ranked.probability() >= DATA.value("least-probability")) {
                sites.addAll(places(ranked, location.verdict().sentence()));
            }
        }
        return List.copyOf(sites);
    }

    /** A lesion site as the named places of the nerve model that it stands for; itself, not modelled, if there is none. */
    private static List<SiteWeight> places(Location.RankedSite ranked, String sentence) {
        String name = ranked.site().name();
        String reason = String.format(Locale.ROOT, "located from the findings: %s", sentence);
        List<Site> places = Site.all().values().stream()
                .filter(site -> site.locateNames().contains(name))
                .toList();
        if (places.isEmpty()) {
            return List.of(new SiteWeight(name.replace('_', ' '), Optional.empty(), ranked.probability(), reason));
        }
        double share = ranked.probability() / places.size();
        return places.stream()
                .map(place -> new SiteWeight(place.name(), Optional.of(place), share, reason))
                .toList();
    }
}
