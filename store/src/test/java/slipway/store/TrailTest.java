package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.care.record.person.Person;
import slipway.care.record.trail.TrailBreak;
import slipway.care.record.trail.TrailReport;

class TrailTest {
    private static Person filled(World world) {
        Act act = World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST);
        Person person = world.person("Ines Palo", act);
        Chart chart = world.chart(person, act);
        chart.save(Section.SITES, 0, World.json("{\"sites\":{\"a\":1}}")).orThrow();
        chart.save(Section.SITES, 1, World.json("{\"sites\":{\"a\":2}}")).orThrow();
        return person;
    }

    @ParameterizedTest
    @EnumSource
    void whatTheProgramWroteVerifies(Databases kind) {
        try (var world = new World(kind)) {
            filled(world);
            TrailReport report = world.records.trail().verify();
            assertThat(report.breaks()).isEmpty();
            assertThat(report.chains()).isEqualTo(2);
            // Clinic, account; person, episode, two saves.
            assertThat(report.entries()).isEqualTo(6);
        }
    }

    @ParameterizedTest
    @EnumSource
    void tamperingIsFound(Databases kind) {
        assertFound(
                kind, "update trail_entry set who = 'nobody' where entity = 'episode'", TrailBreak.Kind.ENTRY_CHANGED);
        assertFound(kind, "delete from trail_entry where entity = 'episode'", TrailBreak.Kind.ENTRY_REMOVED);
        assertFound(
                kind,
                "update trail_payload set after_text = '{}' where seq = 3 and chain_kind = 'PERSON'",
                TrailBreak.Kind.PAYLOAD_CHANGED);
        assertFound(
                kind,
                "delete from trail_payload where seq = 3 and chain_kind = 'PERSON'",
                TrailBreak.Kind.PAYLOAD_REMOVED);
        assertFound(kind, "delete from trail_entry where seq = 4 and chain_kind = 'PERSON'", TrailBreak.Kind.END);
        assertFound(kind, "delete from trail_entry where chain_kind = 'PERSON'", TrailBreak.Kind.END);
        assertFound(kind, "delete from trail_head where chain_kind = 'PERSON'", TrailBreak.Kind.END);
    }

    private static void assertFound(Databases kind, String sql, TrailBreak.Kind found) {
        try (var world = new World(kind)) {
            filled(world);
            world.database.run(sql);
            assertThat(world.records.trail().verify().breaks())
                    .as(sql)
                    .extracting(TrailBreak::kind)
                    .contains(found);
        }
    }

    @ParameterizedTest
    @EnumSource
    void erasureTakesTheContentAndLeavesTheChain(Databases kind) {
        try (var world = new World(kind)) {
            Person person = filled(world);
            world.records.people().erase(person.id(), "asked for by letter", World.PROGRAM);

            assertThat(world.records.people().find(person.id(), World.PROGRAM)).isEmpty();
            assertThat(world.records.trail().verify().breaks()).isEmpty();
            assertThat(world.database.holds("Palo"))
                    .as("some table still holds the name")
                    .isFalse();
        }
    }

    /** A row that was deleted or overwritten would stay readable in the free parts of the file. */
    @Test
    void nothingOfAnErasedPersonStaysInTheFile() throws IOException {
        try (var world = new World(Databases.SQLITE)) {
            Person person = filled(world);
            Path file = Path.of(world.database.settings().url().substring("jdbc:sqlite:".length()));
            world.records.people().erase(person.id(), "asked for by letter", World.PROGRAM);
            // Closing moves what is still in the log into the file, and deletes the log.
            world.store.close();
            assertThat(Files.readString(file, StandardCharsets.ISO_8859_1))
                    .contains("harbour")
                    .doesNotContain("Palo", "invented@example.org");
        }
    }
}
