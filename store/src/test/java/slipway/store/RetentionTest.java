package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.EpisodeState;
import slipway.care.record.person.Person;
import slipway.mechanics.body.Side;

class RetentionTest {
    private static final Instant LATER = World.NOON.plus(Duration.ofDays(400));

    @ParameterizedTest
    @EnumSource
    void onlyPeopleOfWhomNothingIsOpenOrNewAreOver(Databases kind) {
        try (var world = new World(kind)) {
            Act act = World.act(world.therapist("ada", Reach.CLINIC), Role.THERAPIST);
            Person over = world.person("Ines Palo", act);
            close(world.chart(over, act));
            Person read = world.person("Rui Sand", act);
            close(world.chart(read, act));
            Person open = world.person("Ana Reed", act);
            world.chart(open, act);
            Person changed = world.person("Tom Vale", act);
            close(world.chart(changed, act));
            world.records
                    .people()
                    .change(changed.id(), 1, World.details("Tom Valey"), act.at(LATER))
                    .orThrow();
            // Reading is no writing.
            world.records.people().find(read.id(), act.at(LATER));

            Instant before = LATER.minus(Duration.ofDays(30));
            assertThat(world.records.people().untouchedSince(before, "", 10, World.PROGRAM))
                    .containsExactlyInAnyOrder(over.id(), read.id());
            String first = world.records
                    .people()
                    .untouchedSince(before, "", 1, World.PROGRAM)
                    .get(0);
            assertThat(world.records.people().untouchedSince(before, first, 10, World.PROGRAM))
                    .hasSize(1)
                    .doesNotContain(first);
            assertThat(world.records.people().untouchedSince(World.NOON, "", 10, World.PROGRAM))
                    .isEmpty();
        }
    }

    private static void close(Chart chart) {
        chart.change(1, Side.LEFT, chart.episode().therapistId(), EpisodeState.CLOSED)
                .orThrow();
    }
}
