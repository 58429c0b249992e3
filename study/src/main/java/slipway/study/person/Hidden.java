package slipway.study.person;

import slipway.study.load.LoadProfile;
import slipway.study.load.LoadTable;
import slipway.study.random.Noise;
import slipway.study.world.Trait;
import slipway.study.world.World;

/** What is hidden in one person and does not change: nerve, tolerance at the start and when well, habits. */
public final class Hidden {
    private static final int BODY = 1;
    private static final int PLACE = 2;
    private static final int NERVE = 3;
    private static final int TRAITS = 100;

    private final Noise noise;
    private final double[] values = new double[Trait.values().length];
    private final LoadProfile loads;
    private final LoadProfile seen;
    private final double startTolerancePct;
    private final double fullTolerancePct;

    private Hidden(World world, LoadTable table, Noise noise) {
        this.noise = noise;
        for (Trait trait : Trait.values()) {
            int purpose = TRAITS + trait.ordinal();
            values[trait.ordinal()] =
                    world.spread(trait).value(noise.normal(purpose, -1, 0), noise.uniform(purpose, -1, 1));
        }
        link(Trait.REACTIVITY, Trait.REACTIVITY_LINK);
        link(Trait.SETTLE_HALF, Trait.SETTLE_LINK);
        int body = table.bodyAt(noise.uniform(BODY, -1, 0));
        int place = table.placeAt(noise.uniform(PLACE, -1, 0));
        loads = table.truth(body, place, table.drawAt(noise.uniform(NERVE, -1, 0)), get(Trait.SPREAD_ALONG));
        seen = table.seen(body, place);
        double full = loads.atRaise(get(Trait.FULL_RAISE));
        double earlier = get(Trait.ONSET_LINK)
                * get(Trait.IRRITABILITY_TRAIT)
                * world.spread(Trait.ONSET_RAISE).b();
        double low = world.spread(Trait.ONSET_RAISE).low();
        double onset = Math.max(low, get(Trait.ONSET_RAISE) - earlier);
        fullTolerancePct = full;
        startTolerancePct = Math.min(full, Math.max(get(Trait.LEAST_TOLERANCE) * full, loads.atRaise(onset)));
    }

    /** The person of this number in a world. */
    public static Hidden of(World world, LoadTable table, long seed, long number) {
        return new Hidden(world, table, Noise.of(seed, world.id(), number));
    }

    private void link(Trait trait, Trait link) {
        values[trait.ordinal()] *= Math.exp(get(link) * get(Trait.IRRITABILITY_TRAIT));
    }

    /** A hidden number. */
    public double get(Trait trait) {
        return values[trait.ordinal()];
    }

    /** This person's random numbers. */
    public Noise noise() {
        return noise;
    }

    /** True loads of this person's nerve. */
    public LoadProfile loads() {
        return loads;
    }

    /** What a way of dosing is shown of them. */
    public LoadProfile seen() {
        return seen;
    }

    /** The load at which symptoms begin on the first day, an ordinary one. */
    public double startTolerancePct() {
        return startTolerancePct;
    }

    /** The same when well. */
    public double fullTolerancePct() {
        return fullTolerancePct;
    }
}
