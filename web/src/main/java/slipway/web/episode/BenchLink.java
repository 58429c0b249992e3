package slipway.web.episode;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slipway.care.visit.VisitPlan;
import slipway.mechanics.body.Side;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.web.shell.Numbers;

/** The address of the bench with the body of an episode: stature, side, and the place that is suspected most. */
public final class BenchLink {
    private BenchLink() {}

    /** The address, with the episode so that the person's load ruler is shown. */
    public static String of(String episodeId, VisitPlan visit) {
        var fields = new ArrayList<String>(List.of("episode=" + coded(episodeId)));
        fields.add("stature=" + Numbers.plain(visit.file().patient().statureCm()));
        if (visit.file().episode().side() == Side.LEFT) {
            fields.add("side=" + Side.LEFT.name().toLowerCase(Locale.ROOT));
        }
        visit.result().flatMap(result -> result.dose().site()).ifPresent(site -> place(fields, site));
        return "/bench?" + String.join("&", fields);
    }

    private static void place(List<String> fields, Site site) {
        if (site.tract() != Tract.SCIATIC_TIBIAL) {
            fields.add("tract=" + site.tract().key());
        }
        fields.add("site=" + coded(site.name()));
    }

    private static String coded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
