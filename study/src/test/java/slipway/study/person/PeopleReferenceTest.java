package slipway.study.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import slipway.study.load.LoadTable;
import slipway.study.load.LoadTables;
import slipway.study.world.Trait;
import slipway.study.world.World;
import slipway.study.world.Worlds;

/** What the simulated people must reproduce of published figures: the worlds say that they do. */
class PeopleReferenceTest {
    private static final int PEOPLE = 3000;
    private static final LoadTable TABLE = LoadTables.compute();

    /**
     * 87 % improved at 12 weeks with and without bed rest (Vroomen 1999, N Engl J Med, n = 183, read in a news report of the
     * trial); improved is read as half of what was missing back.
     */
    @Test
    void naturalRecoveryIs87PercentAtTwelveWeeksWithOrWithoutWork() {
        World world = Worlds.get("natural-recovery");
        double idle = shareRecovered(world, 84, false);
        double busy = shareRecovered(world, 84, true);
        // Sampling: three standard errors of a share of 0.87.
        double sampling = 3 * Math.sqrt(0.87 * 0.13 / PEOPLE);
        assertThat(idle).isEqualTo(0.87, within(sampling));
        assertThat(busy).isEqualTo(idle);
    }

    /** Half are better by 30 % within a year (Konstantinou 2018, ATLAS, n = 609: 55 % at 12 months): the usual world is no worse. */
    @Test
    void usualPeopleRecoverNoSlowerThanPrimaryCare() {
        World world = Worlds.get("usual");
        long better = LongStream.range(0, PEOPLE)
                .filter(number -> idle(world, number, 364, false).recovered() >= 0.3)
                .count();
        assertThat((double) better / PEOPLE).isGreaterThan(0.55);
    }

    /** 220 sessions logged against 176 measured, ratio 1.25 (n = 54, r = 0.52; Oxford publication record 926887). */
    @Test
    void diariesHoldAQuarterMoreThanWasDone() {
        World world = Worlds.get("usual");
        long done = 0;
        long told = 0;
        for (long number = 0; number < PEOPLE; number++) {
            var person = new SimulatedPerson(Hidden.of(world, TABLE, 5, number), 20);
            for (int day = 0; day < 20; day++) {
                person.startDay(day);
                boolean does = person.does(0);
                done += does ? 1 : 0;
                told += does || person.claim(0, 5).isPresent() ? 1 : 0;
                person.endDay();
            }
        }
        // Model difference: people who do nearly everything cannot claim a quarter more, flares take sessions away.
        assertThat((double) told / done).isEqualTo(1.25, within(0.06));
    }

    /** Leg raise of the simulated people at the start, 47 ± 12 deg within what "40 to 60 deg" of common practice means. */
    @Test
    void onsetsLieWhereLegRaisesAreLimited() {
        World world = Worlds.get("usual");
        double[] onsets = LongStream.range(0, PEOPLE)
                .mapToDouble(number -> {
                    Hidden hidden = Hidden.of(world, TABLE, 5, number);
                    return hidden.loads().raiseAt(hidden.startTolerancePct());
                })
                .sorted()
                .toArray();
        assertThat(onsets[PEOPLE / 2]).isBetween(40.0, 60.0);
    }

    /** Event rates: expected number within four standard errors of a Poisson count. */
    @Test
    void redFlagsComeAtTheirRate() {
        World world = Worlds.get("red-flags");
        long events = 0;
        for (long number = 0; number < PEOPLE; number++) {
            var person = new SimulatedPerson(Hidden.of(world, TABLE, 5, number), 56);
            for (int day = 0; day < 56; day++) {
                person.startDay(day);
                events += person.openEvents().size();
                person.openEvents().keySet().forEach(person::answered);
                person.endDay();
            }
        }
        double expected = PEOPLE * 55.0 * (0.001 + 0.004 + 0.004);
        assertThat((double) events).isEqualTo(expected, within(4 * Math.sqrt(expected)));
    }

    private static double shareRecovered(World world, int days, boolean working) {
        long better = LongStream.range(0, PEOPLE)
                .filter(number -> idle(world, number, days, working).recovered() >= 0.5)
                .count();
        return (double) better / PEOPLE;
    }

    private static SimulatedPerson idle(World world, long number, int days, boolean working) {
        var person = new SimulatedPerson(Hidden.of(world, TABLE, 11, number), days);
        for (int day = 0; day < days; day++) {
            person.startDay(day);
            if (working) {
                person.session(0, person.hidden().loads().rungs() - 1, 10);
            }
            person.endDay();
        }
        return person;
    }

    /** The reference share must not depend on a trait that the world sets to nothing. */
    @Test
    void workChangesNothingInNaturalRecovery() {
        assertThat(Worlds.get("natural-recovery").spread(Trait.DOSE_GAIN).a()).isZero();
        assertThat(Worlds.get("usual").spread(Trait.DOSE_GAIN).a()).isPositive();
    }
}
