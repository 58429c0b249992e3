package slipway.pictures.nerve;

import java.util.List;

/**
 * What the straightened nerve shows.
 *
 * @param samples strain and glide along the pathway, rising in position
 * @param landmarks places to name
 * @param sites suspected places, with how likely each is
 * @param validated whether published measurements stand behind it; if not, the picture says so
 */
public record NerveStrip(List<Sample> samples, List<Landmark> landmarks, List<SuspectedSite> sites, boolean validated) {
    /** A strip of a nerve whose model was held against measurements. */
    public NerveStrip(List<Sample> samples, List<Landmark> landmarks, List<SuspectedSite> sites) {
        this(samples, landmarks, sites, true);
    }

    /**
     * The nerve at one place.
     *
     * @param position 0 at the brainstem, 1 at the end of the nerve
     * @param strainPercent change of length against the reference posture
     * @param glideMm slide against its bed, + towards the toes
     * @param wayKnown whether it is known which way it slides
     */
    public record Sample(double position, double strainPercent, double glideMm, boolean wayKnown) {
        public Sample {
            checked(position, "sample");
            if (!Double.isFinite(strainPercent) || !Double.isFinite(glideMm)) {
                throw new IllegalArgumentException("strain and glide must be numbers, were %s %% and %s mm at %s"
                        .formatted(strainPercent, glideMm, position));
            }
        }
    }

    /** Whether the way of the glide is unknown anywhere. */
    boolean someWayUnknown() {
        return samples.stream().anyMatch(sample -> !sample.wayKnown);
    }

    /** A named place. */
    public record Landmark(double position, String label) {
        public Landmark {
            checked(position, label);
        }
    }

    /**
     * A suspected place.
     *
     * @param probability 0 to 1
     */
    public record SuspectedSite(double position, double probability, String label) {
        public SuspectedSite {
            checked(position, label);
            if (!(probability >= 0 && probability <= 1)) {
                throw new IllegalArgumentException(
                        "the probability of %s must be within 0 and 1, was %s".formatted(label, probability));
            }
        }

        /** Whether nothing is left to chance: then it is a marked place, and shown without a number. */
        boolean sure() {
            return probability == 1;
        }
    }

    public NerveStrip {
        samples = List.copyOf(samples);
        landmarks = List.copyOf(landmarks);
        sites = List.copyOf(sites);
        if (samples.size() < 2) {
            throw new IllegalArgumentException("a nerve strip needs at least 2 samples, had " + samples.size());
        }
        for (int i = 1; i < samples.size(); i++) {
            if (!(samples.get(i).position() > samples.get(i - 1).position())) {
                throw new IllegalArgumentException(
                        "samples of a nerve strip must rise in position, sample %d is at %s after %s"
                                .formatted(
                                        i + 1,
                                        samples.get(i).position(),
                                        samples.get(i - 1).position()));
            }
        }
    }

    private static void checked(double position, String label) {
        if (!(position >= 0 && position <= 1) || label.isBlank()) {
            throw new IllegalArgumentException(
                    "a place on the nerve needs a position within 0 and 1 and a name, was %s \"%s\""
                            .formatted(position, label));
        }
    }

    /** The sample nearest to a position. */
    Sample nearest(double position) {
        Sample best = samples.get(0);
        for (Sample sample : samples) {
            if (Math.abs(sample.position - position) < Math.abs(best.position - position)) {
                best = sample;
            }
        }
        return best;
    }
}
