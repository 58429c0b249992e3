package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.chart.Opening;
import slipway.care.record.person.Person;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.care.record.trail.TrailEntry;

class ScopeTest {
    @ParameterizedTest
    @EnumSource
    void reachDecidesWhoseEpisodesAreSeen(Databases kind) {
        try (var world = new World(kind)) {
            StaffAccount ada = world.therapist("ada", Reach.OWN);
            StaffAccount ben = world.therapist("ben", Reach.TEAM);
            StaffAccount cal = world.therapist("cal", Reach.CLINIC);
            StaffAccount dan = world.account("dan", Role.LEAD, Reach.OWN);
            StaffAccount eve = world.account("eve", Role.AUDITOR, Reach.CLINIC);
            Act act = World.act(ada, Role.THERAPIST);
            String episode =
                    world.chart(world.person("Ines Palo", act), act).episode().id();

            assertThat(open(world, episode, act)).isEqualTo("open");
            assertThat(open(world, episode, World.act(ben, Role.THERAPIST))).isEqualTo("OUT_OF_REACH");
            assertThat(open(world, episode, World.act(cal, Role.THERAPIST))).isEqualTo("open");
            assertThat(open(world, episode, World.act(dan, Role.LEAD))).isEqualTo("open");
            assertThat(open(world, episode, World.act(eve, Role.AUDITOR))).isEqualTo("ROLE");
            // A role that the account does not have opens nothing.
            assertThat(open(world, episode, World.act(ada, Role.LEAD))).isEqualTo("ROLE");

            world.records.staff().addTeam("mornings", Set.of(ada.id(), ben.id()), World.PROGRAM);
            assertThat(open(world, episode, World.act(ben, Role.THERAPIST))).isEqualTo("open");
        }
    }

    @ParameterizedTest
    @EnumSource
    void anotherClinicSeesNothing(Databases kind) {
        try (var world = new World(kind)) {
            Act act = World.act(world.therapist("ada", Reach.CLINIC), Role.THERAPIST);
            Person person = world.person("Ines Palo", act);
            String episode = world.chart(person, act).episode().id();
            var program = new Act("import", Role.PROGRAM, "hill", World.NOON);
            world.records.clinics().add("Hill Road", "therapy", "", "112", true, program);
            StaffAccount stranger = world.records
                    .staff()
                    .add("sam", "Invented Sam", Set.of(Role.LEAD, Role.THERAPIST), Reach.CLINIC, "{none}", program);
            Act other = World.act(stranger, Role.LEAD);

            assertThat(open(world, episode, other)).isEqualTo("UNKNOWN");
            assertThat(world.records.people().find(person.id(), other)).isEmpty();
            assertThat(world.records.charts().ofPerson(person.id(), other)).isEmpty();
            assertThat(world.records.caseload().people("", "", 10, other)).isEmpty();
            assertThat(world.records.caseload().today(10, other)).isEmpty();
            assertThatThrownBy(() -> world.records.people().change(person.id(), 1, World.details("Other Name"), other))
                    .isInstanceOf(NotThere.class);
            assertThatThrownBy(() -> world.records
                            .staff()
                            .breakGlassForEpisode(episode, "curious", World.NOON.plusSeconds(60), other))
                    .isInstanceOf(NotThere.class);
        }
    }

    @ParameterizedTest
    @EnumSource
    void brokenGlassOpensForAWhileAndIsInTheTrail(Databases kind) {
        try (var world = new World(kind)) {
            Act ada = World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST);
            Act ben = World.act(world.therapist("ben", Reach.OWN), Role.THERAPIST);
            Person person = world.person("Ines Palo", ada);
            String episode = world.chart(person, ada).episode().id();
            assertThat(open(world, episode, ben)).isEqualTo("OUT_OF_REACH");

            var grant = world.records
                    .staff()
                    .breakGlassForEpisode(episode, "fell in the corridor", World.NOON.plus(Duration.ofHours(1)), ben);

            assertThat(grant.personId()).isEqualTo(person.id());
            assertThat(open(world, episode, ben)).isEqualTo("open");
            assertThat(open(world, episode, ben.at(World.NOON.plus(Duration.ofHours(2)))))
                    .isEqualTo("OUT_OF_REACH");
            assertThat(world.records.staff().grants(World.CLINIC, World.NOON)).containsExactly(grant);
            assertThat(world.records.trail().list(Chain.ofPerson(person.id()), 0, 50))
                    .extracting(TrailEntry::action)
                    .contains(Action.BREAK_GLASS, Action.READ);
        }
    }

    private static String open(World world, String episodeId, Act act) {
        Opening opening = world.records.charts().open(episodeId, act);
        return opening instanceof Opening.Refused refused ? refused.reason().name() : "open";
    }
}
