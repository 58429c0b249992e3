package slipway.mechanics.pathway;

/**
 * The stretch of bed that a joint lengthens: a raised cosine with compact support and integral 1.
 *
 * @param centreM arc length of its middle, m
 * @param halfWidthM half of its length, m
 */
record JointZone(double centreM, double halfWidthM) {
    JointZone scaled(double factor) {
        return new JointZone(centreM, halfWidthM * factor);
    }

    double fromM() {
        return centreM - halfWidthM;
    }

    double toM() {
        return centreM + halfWidthM;
    }

    /** Share of the joint's elongation that falls between two arc lengths, 0 to 1; exact. */
    double share(double fromM, double toM) {
        return cumulative(toM) - cumulative(fromM);
    }

    private double cumulative(double arcM) {
        double u = Math.max(-1, Math.min(1, (arcM - centreM) / halfWidthM));
        return 0.5 * (1 + u + Math.sin(Math.PI * u) / Math.PI);
    }
}
