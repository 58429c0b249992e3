package slipway.web.episode.locate;

import java.util.ArrayList;
import java.util.List;
import slipway.care.casefile.SiteWeight;
import slipway.care.visit.SiteChoice;
import slipway.reasoning.locate.Location;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The located places as a case file names them, with weights that sum to 1. */
final class Proposal {
    private static final int PARTS = 1000;

    private Proposal() {}

    /** The places of a location as the content of their section. */
    static ObjectNode content(Location location) {
        List<SiteWeight> places = SiteChoice.places(location);
        double sum = places.stream().mapToDouble(SiteWeight::probability).sum();
        var parts = new ArrayList<Long>();
        long left = PARTS;
        for (SiteWeight place : places) {
            long part = Math.max(1, Math.round(PARTS * place.probability() / sum));
            parts.add(part);
            left -= part;
        }
        ObjectNode content = JsonMapper.shared().createObjectNode();
        var sites = content.putArray("sites");
        for (int i = 0; i < places.size(); i++) {
            // What rounding leaves over goes to the likeliest.
            double weight = (parts.get(i) + (i == 0 ? left : 0)) / (double) PARTS;
            sites.addObject()
                    .put("site", places.get(i).name())
                    .put("probability", weight)
                    .put("reason", places.get(i).reason());
        }
        return content;
    }

    /** Places and weights in short. */
    static String inShort(ObjectNode content) {
        var words = new ArrayList<String>();
        content.path("sites")
                .forEach(site -> words.add(site.path("site").asString("") + " "
                        + Math.round(100 * site.path("probability").asDouble()) + " %"));
        return String.join("; ", words);
    }
}
