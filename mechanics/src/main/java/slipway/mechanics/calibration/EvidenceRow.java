package slipway.mechanics.calibration;

import java.util.Optional;
import java.util.OptionalDouble;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Site;

/**
 * One published measurement that the model can be asked for.
 *
 * @param id short name, unique in its table
 * @param use calibrate, validate, part, geometry, context or later
 * @param study authors, year, journal
 * @param site where it was measured; empty for an order row and for the bed elongation
 * @param motion from which posture to which
 * @param quantity what was measured
 * @param relation for an order row, the relation between other rows; otherwise empty
 * @param published mean, spread and number of people as published
 */
public record EvidenceRow(
        String id,
        String use,
        String study,
        Optional<Site> site,
        Motion motion,
        Quantity quantity,
        String relation,
        Published published) {

    /** The two postures of a measurement. */
    public record Motion(Posture from, Posture to) {}

    /**
     * What the study reported; absent where it did not.
     *
     * @param mean mean over people, in the unit of the quantity
     * @param sd standard deviation between people
     * @param people number of people or specimens
     * @param sdAssumed whether the sd was not published but assumed
     */
    public record Published(OptionalDouble mean, OptionalDouble sd, OptionalDouble people, boolean sdAssumed) {
        /** Standard error of the published mean; empty without an sd. One person where no number is given. */
        public OptionalDouble standardError() {
            return sd.isPresent()
                    ? OptionalDouble.of(sd.getAsDouble() / Math.sqrt(people.orElse(1)))
                    : OptionalDouble.empty();
        }
    }

    /** Whether the parameters may be fitted to this row. */
    public boolean calibrates() {
        return use.equals("calibrate");
    }
}
