package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.Saving;
import slipway.care.record.access.Reach;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionRecord;
import slipway.care.record.person.Person;

class RecordsTest {
    @ParameterizedTest
    @EnumSource
    void aPersonIsReadBackAsWritten(Databases kind) {
        try (var world = new World(kind)) {
            Act act = World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST);
            Person person = world.person("Zoë 🦵 O’Shea-Ødegård", act);
            assertThat(world.records.people().find(person.id(), act)).contains(person);
        }
    }

    @ParameterizedTest
    @EnumSource
    void theSecondEditorIsToldAndNothingOfTheFirstIsLost(Databases kind) {
        try (var world = new World(kind)) {
            Act act = World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST);
            Chart chart = world.chart(world.person("Ines Palo", act), act);
            chart.save(Section.EXAMINATION, 0, World.json("{\"examination\":{\"reflexes\":1}}"));

            Saving<SectionRecord> second =
                    chart.save(Section.EXAMINATION, 0, World.json("{\"examination\":{\"reflexes\":2}}"));

            assertThat(second).isInstanceOf(Saving.Stale.class);
            SectionRecord kept = chart.section(Section.EXAMINATION);
            assertThat(kept.version()).isEqualTo(1);
            assertThat(kept.content()).isEqualTo(World.json("{\"examination\":{\"reflexes\":1}}"));
            assertThat(((Saving.Stale<SectionRecord>) second).current()).isEqualTo(kept);
        }
    }

    @ParameterizedTest
    @EnumSource
    void anEarlierVersionStaysReadable(Databases kind) {
        try (var world = new World(kind)) {
            Act act = World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST);
            Chart chart = world.chart(world.person("Ines Palo", act), act);
            SectionRecord first = chart.save(Section.SITES, 0, World.json("{\"sites\":{\"a\":1}}"))
                    .orThrow();
            SectionRecord now = chart.save(Section.SITES, 1, World.json("{\"sites\":{\"a\":2}}"))
                    .orThrow();
            assertThat(chart.earlier(Section.SITES, 1)).contains(first);
            assertThat(chart.sections()).containsEntry(Section.SITES, now);
        }
    }

    @ParameterizedTest
    @EnumSource
    void aDraftWaitsForItsUserAndGoesWithTheSave(Databases kind) {
        try (var world = new World(kind)) {
            Act ada = World.act(world.therapist("ada", Reach.CLINIC), Role.THERAPIST);
            Act ben = World.act(world.therapist("ben", Reach.CLINIC), Role.THERAPIST);
            Chart chart = world.chart(world.person("Ines Palo", ada), ada);
            String episode = chart.episode().id();
            var drafts = world.records.drafts();
            drafts.save(episode, "examination", 0, "first", ada);
            drafts.save(episode, "examination", 0, "second", ada);

            assertThat(drafts.find(episode, "examination", ada).orElseThrow().content())
                    .isEqualTo("second");
            assertThat(drafts.find(episode, "examination", ben)).isEmpty();
            chart.save(Section.EXAMINATION, 0, World.json("{\"examination\":{}}"));
            assertThat(drafts.list(episode, ada)).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void oldDraftsArePurgedAndStrangersKeepNone(Databases kind) {
        try (var world = new World(kind)) {
            Act ada = World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST);
            Act ben = World.act(world.therapist("ben", Reach.OWN), Role.THERAPIST);
            String episode =
                    world.chart(world.person("Ines Palo", ada), ada).episode().id();
            var drafts = world.records.drafts();
            assertThatThrownBy(() -> drafts.save(episode, "history", 0, "x", ben))
                    .hasMessageContaining("no episode");
            drafts.save(episode, "history", 0, "x", ada);
            assertThat(drafts.purge(World.NOON)).isZero();
            assertThat(drafts.purge(World.NOON.plus(Duration.ofDays(1)))).isEqualTo(1);
            assertThat(drafts.find(episode, "history", ada)).isEmpty();
        }
    }
}
