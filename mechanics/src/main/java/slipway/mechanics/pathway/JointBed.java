package slipway.mechanics.pathway;

import java.util.List;

/**
 * Where one joint lengthens the bed of one branch: the zone at the joint, and bellies of muscles that take a share of it.
 *
 * @param zone the zone at the joint
 * @param bellies stretches of muscle
 */
record JointBed(JointZone zone, List<Stretch> bellies) {
    /**
     * A stretch of muscle.
     *
     * @param zone where it lies
     * @param share what it takes of the joint's elongation
     */
    record Stretch(JointZone zone, double share) {}

    JointBed {
        bellies = List.copyOf(bellies);
    }

    /** The same with another width of the zone at the joint. */
    JointBed scaled(double factor) {
        return new JointBed(zone.scaled(factor), bellies);
    }

    /** Share of the joint's elongation that falls between two arc lengths, 0 to 1; exact. */
    double share(double fromM, double toM) {
        double left = 1;
        double inBellies = 0;
        for (Stretch belly : bellies) {
            left -= belly.share();
            inBellies += belly.share() * belly.zone().share(fromM, toM);
        }
        return left * zone.share(fromM, toM) + inBellies;
    }
}
