package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.care.record.follow.CheckIn;
import slipway.care.record.person.Person;

/** The clock of a server leaps a year ahead, and back behind where it was. */
class ClockLeapTest {
    private static final List<Instant> TIMES = List.of(
            World.NOON, World.NOON.plus(Duration.ofDays(365)), World.NOON.minus(Duration.ofHours(2)), World.NOON);

    @ParameterizedTest
    @EnumSource
    void nothingIsLostRefusedOrPutInAnotherOrderOfVersions(Databases kind) {
        try (var world = new World(kind)) {
            Act act = World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST);
            Person person = world.person("Ines Palo", act);
            Chart first = world.chart(person, act);
            int number = 0;
            for (Instant time : TIMES) {
                Chart chart = world.records
                        .charts()
                        .open(first.episode().id(), act.at(time))
                        .chartIfOpen()
                        .orElseThrow();
                String id = "check-in-" + number;
                chart.checkIns().add(id, id, "some-glide", World.json("{\"worst\":1}"));
                chart.save(Section.SITES, number, World.json("{\"sites\":{\"n\":" + number + "}}"))
                        .orThrow();
                number++;
            }
            assertThat(first.checkIns().list())
                    .extracting(CheckIn::id)
                    .containsExactlyInAnyOrder("check-in-0", "check-in-1", "check-in-2", "check-in-3");
            // Versions go by their number, not by the clock.
            assertThat(first.section(Section.SITES).content().at("/sites/n").asInt())
                    .isEqualTo(3);
            assertThat(world.records.trail().verify().breaks()).isEmpty();
        }
    }
}
