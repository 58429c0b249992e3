package slipway.web.episode.locate;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slipway.care.record.chart.ComputedResult;
import slipway.reasoning.locate.Location;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A location as it is kept, and a kept one beside those of now. */
public final class KeptSites {
    /** A place below this is not kept. */
    private static final double KEPT_FROM = 0.005;

    private KeptSites() {}

    /** A location as JSON. */
    static ObjectNode body(Location location) {
        ObjectNode body = JsonMapper.shared().createObjectNode();
        body.put("sentence", location.verdict().sentence())
                .put("enough", location.verdict().enough());
        var sites = body.putArray("sites");
        for (Location.RankedSite ranked : location.sites()) {
            if (ranked.probability() >= KEPT_FROM) {
                sites.addObject()
                        .put("site", ranked.site().label())
                        .put("probability", ranked.probability())
                        .put("low", ranked.interval().low())
                        .put("high", ranked.interval().high());
            }
        }
        return body;
    }

    /**
     * One place in three computations; an empty chance was too small to keep.
     *
     * @param was as it was kept
     * @param again the same findings with the program of now
     * @param now the findings of now
     */
    public record Row(String site, Optional<Chance> was, Optional<Chance> again, Optional<Chance> now) {}

    /** A chance with its interval. */
    public record Chance(double probability, double low, double high) {}

    static List<Row> compare(ComputedResult kept, Optional<Location> again, Optional<Location> now) {
        ObjectNode was = kept.body();
        ObjectNode second = again.map(KeptSites::body).orElseGet(KeptSites::empty);
        ObjectNode third = now.map(KeptSites::body).orElseGet(KeptSites::empty);
        Set<String> sites = new LinkedHashSet<>();
        List.of(was, second, third)
                .forEach(body -> body.path("sites")
                        .forEach(site -> sites.add(site.path("site").asString())));
        var rows = new ArrayList<Row>();
        sites.forEach(site -> rows.add(new Row(site, chance(was, site), chance(second, site), chance(third, site))));
        return rows;
    }

    private static Optional<Chance> chance(ObjectNode body, String site) {
        for (JsonNode each : body.path("sites")) {
            if (each.path("site").asString().equals(site)) {
                return Optional.of(new Chance(
                        each.path("probability").asDouble(),
                        each.path("low").asDouble(),
                        each.path("high").asDouble()));
            }
        }
        return Optional.empty();
    }

    private static ObjectNode empty() {
        return JsonMapper.shared().createObjectNode();
    }
}
