package slipway.web.bench;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import slipway.care.bench.Stance;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Side;
import slipway.mechanics.nerve.Tract;

/** The question to the bench as the query of an address: only what differs from the usual. */
final class BenchAddress {
    private static final double CM_PER_M = 100;

    private BenchAddress() {}

    /** The query, without a question mark; empty for the usual question. */
    static String of(BenchQuery query) {
        return fields(query).entrySet().stream()
                .map(field -> URLEncoder.encode(field.getKey(), StandardCharsets.UTF_8) + "="
                        + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    /** The same as fields of a form, so that another form of the page carries the question along. */
    static Map<String, String> fields(BenchQuery query) {
        var fields = new LinkedHashMap<String, String>();
        stance(fields, "", query.first());
        query.second().ifPresent(stance -> {
            fields.put("compare", "b");
            stance(fields, BenchQuery.SECOND, stance);
        });
        if (query.tract() != Tract.SCIATIC_TIBIAL) {
            fields.put("tract", query.tract().key());
        }
        query.site().ifPresent(site -> fields.put("site", site.name()));
        if (query.side() == Side.LEFT) {
            fields.put("side", "left");
        }
        query.view().ifPresent(view -> fields.put("view", view.key()));
        if (query.person().statureM() != Person.STANDARD.statureM()) {
            fields.put("stature", Numbers.angle(Math.round(query.person().statureM() * CM_PER_M * 10) / 10.0));
        }
        query.episode().ifPresent(id -> fields.put("episode", id));
        return fields;
    }

    private static void stance(Map<String, String> fields, String prefix, Stance stance) {
        fields.put(prefix + "position", stance.position().name());
        BenchReader.joints().forEach((name, field) -> {
            double deg = stance.posture().angleDeg(field.joint(), field.limb());
            if (deg != stance.position().posture().angleDeg(field.joint(), field.limb())) {
                fields.put(prefix + name, Numbers.angle(deg));
            }
        });
    }
}
