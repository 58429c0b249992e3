package slipway.reasoning.dose;

import java.util.EnumMap;
import java.util.Map;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.body.Joint;
import slipway.mechanics.nerve.Segment;
import slipway.mechanics.nerve.Site;
import slipway.reasoning.ReasoningData;

/** Distances along the pathway, in fractions of stature ({@code path.csv}). */
final class Pathway {
    private static final Map<Segment, Double> STARTS = new EnumMap<>(Segment.class);
    private static final Map<Segment, Double> LENGTHS = new EnumMap<>(Segment.class);

    static {
        double start = 0;
        for (CSVRecord row : ReasoningData.table("path.csv")) {
            String key = row.get("segment");
            Segment segment =
                    Segment.find(key).orElseThrow(() -> new IllegalStateException("path.csv: unknown segment " + key));
            double length = Double.parseDouble(row.get("length"));
            STARTS.put(segment, start);
            LENGTHS.put(segment, length);
            start += length;
        }
    }

    private Pathway() {}

    /** How far a joint is from a site along the nerve. */
    static double distance(Joint joint, Site site) {
        return Math.abs(place(joint) - at(site.segment(), site.position()));
    }

    private static double place(Joint joint) {
        return switch (joint) {
            case SPINE, SPINE_SIDE -> at(Segment.CANAL, 0.5);
            case HIP, HIP_ABDUCTION, HIP_ROTATION -> at(Segment.THIGH, 0);
            case KNEE -> at(Segment.SHANK, 0);
            case ANKLE, ANKLE_INVERSION -> at(Segment.FOOT, 0);
            case TOES -> at(Segment.FOOT, 1);
            case NECK, SHOULDER_ABDUCTION, ELBOW, WRIST, WRIST_DEVIATION -> 0;
        };
    }

    private static double at(Segment segment, double position) {
        return STARTS.getOrDefault(segment, Double.NaN) + position * LENGTHS.getOrDefault(segment, Double.NaN);
    }
}
