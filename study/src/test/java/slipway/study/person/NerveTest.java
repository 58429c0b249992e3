package slipway.study.person;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slipway.study.load.LoadTable;
import slipway.study.load.LoadTables;
import slipway.study.world.Worlds;

class NerveTest {
    private static final LoadTable TABLE = LoadTables.compute();

    private static Nerve nerve(String world, int number) {
        var nerve = new Nerve(Hidden.of(Worlds.get(world), TABLE, 3, number), 56);
        nerve.startDay(0);
        return nerve;
    }

    @Test
    void moreLoadAndMoreRepetitionsHurtMore() {
        for (int number = 0; number < 50; number++) {
            double threshold = nerve("usual", number).thresholdPct();
            double little =
                    nerve("usual", number).session(0, 0, 1.5 * threshold, 3).overload();
            double longer =
                    nerve("usual", number).session(0, 0, 1.5 * threshold, 10).overload();
            double higher =
                    nerve("usual", number).session(0, 0, 2.5 * threshold, 3).overload();
            assertThat(longer).isGreaterThanOrEqualTo(little);
            assertThat(higher).isGreaterThanOrEqualTo(little);
        }
    }

    @Test
    void overloadSensitisesAndTheNightUndoesIt() {
        Nerve nerve = nerve("irritable", 1);
        double threshold = nerve.thresholdPct();
        nerve.session(0, 0, 3 * threshold, 10);
        double after = nerve.sensitised();
        assertThat(after).isPositive();
        nerve.endDay();
        for (int day = 1; day < 5; day++) {
            nerve.startDay(day);
            nerve.endDay();
        }
        assertThat(nerve("irritable", 1).sensitised()).isLessThan(after);
    }

    @Test
    void wellDosedWorkBringsToleranceBackAndOverloadTakesIt() {
        Nerve well = nerve("usual", 4);
        Nerve idle = nerve("usual", 4);
        Nerve much = nerve("usual", 4);
        for (int day = 0; day < 40; day++) {
            for (Nerve each : new Nerve[] {well, idle, much}) {
                if (day > 0) {
                    each.startDay(day);
                }
            }
            well.session(day, 0, 0.75 * well.thresholdPct(), 10);
            much.session(day, 0, 3 * much.thresholdPct(), 10);
            for (Nerve each : new Nerve[] {well, idle, much}) {
                each.endDay();
            }
        }
        assertThat(well.capacityPct()).isGreaterThan(idle.capacityPct());
        assertThat(much.capacityPct()).isLessThan(idle.capacityPct());
    }

    @Test
    void inTheWorldWithoutRelationLoadDoesNotMatter() {
        for (int number = 0; number < 30; number++) {
            double low = nerve("no-relation", number).session(0, 0, 0.1, 10).rise();
            double high = nerve("no-relation", number).session(0, 0, 20, 10).rise();
            assertThat(high).isEqualTo(low);
        }
    }

    @Test
    void delayedOverloadShowsLater() {
        Nerve nerve = nerve("delayed", 6);
        Felt felt = nerve.session(0, 0, 4 * nerve.thresholdPct(), 10);
        double sameDay = nerve.sensitised();
        nerve.endDay();
        nerve.startDay(1);
        assertThat(felt.rise()).isLessThan(1);
        assertThat(nerve.sensitised()).isGreaterThan(sameDay);
    }
}
