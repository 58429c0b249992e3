package slipway.care.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipway.mechanics.nerve.Segment;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.pathway.PathwayModel;
import slipway.mechanics.pathway.TractProfile;
import slipway.pictures.look.Palette;
import slipway.pictures.nerve.NerveStrip;
import slipway.pictures.nerve.StraightenedNerve;

/** A posture reading as the picture of the straightened nerve. */
public final class PostureStrip {
    private static final int WIDTH = 760;

    /** Landmarks of the pathway, by the words under the strip. */
    private static final Map<String, Segment> LANDMARKS = landmarks();

    private PostureStrip() {}

    private static Map<String, Segment> landmarks() {
        var landmarks = new LinkedHashMap<String, Segment>();
        landmarks.put("brainstem", Segment.CORD);
        landmarks.put("conus", Segment.CANAL);
        landmarks.put("foramen", Segment.PELVIS);
        landmarks.put("hip", Segment.THIGH);
        landmarks.put("knee", Segment.SHANK);
        landmarks.put("ankle", Segment.FOOT);
        return landmarks;
    }

    private static Site place(PostureReading.AtSite at) {
        return Site.anywhere(at.site()).orElseThrow();
    }

    /** As at the nearest named site: only there the draws were asked one by one. */
    private static boolean wayKnown(PostureReading reading, PathwayModel model, double arcM) {
        return reading.sites().stream()
                .min(Comparator.comparingDouble(site -> Math.abs(model.arcM(place(site)) - arcM)))
                .map(site -> !site.glideMm().signUnsure())
                .orElse(true);
    }

    /** The picture by itself, for paper. */
    public static String svg(PostureReading reading, BenchBody body) {
        return StraightenedNerve.svg(strip(reading, body, Optional.empty()), Palette.PAPER, WIDTH, "posture");
    }

    /**
     * What the picture shows: strain and glide along the tract above the posture that the reading counts from.
     *
     * @param marked a place to mark
     */
    public static NerveStrip strip(PostureReading reading, BenchBody body, Optional<Site> marked) {
        PathwayModel model = body.model(reading.tract().pathway());
        TractProfile end = body.answer(reading.posture(), reading.tract()).profile();
        TractProfile start = body.answer(reading.from(), reading.tract()).profile();
        double length = end.lengthM();
        var samples = new ArrayList<NerveStrip.Sample>();
        for (int i = 0; i < end.arcM().length; i++) {
            samples.add(new NerveStrip.Sample(
                    end.arcM()[i] / length,
                    end.strainPct()[i] - start.strainPct()[i],
                    end.glideMm()[i] - start.glideMm()[i],
                    wayKnown(reading, model, end.arcM()[i])));
        }
        var landmarks = new ArrayList<NerveStrip.Landmark>();
        LANDMARKS.forEach((label, segment) -> {
            if (model.startM(segment) < length) {
                landmarks.add(new NerveStrip.Landmark(model.startM(segment) / length, label));
            }
        });
        double midThighM = 0.5 * (model.startM(Segment.THIGH) + model.startM(Segment.SHANK));
        landmarks.add(new NerveStrip.Landmark(midThighM / length, "mid-thigh"));
        landmarks.sort((one, other) -> Double.compare(one.position(), other.position()));
        List<NerveStrip.SuspectedSite> sites = marked
                .filter(site -> PostureReading.onTract(site, reading.tract()))
                .map(site -> new NerveStrip.SuspectedSite(
                        Math.max(0, Math.min(1, model.arcM(site) / length)), 1, site.name()))
                .stream()
                .toList();
        return new NerveStrip(samples, landmarks, sites, reading.validated());
    }
}
