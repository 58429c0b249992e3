package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.AccessLink;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.access.Reach;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Section;
import slipway.care.record.follow.Alert;
import slipway.care.record.intake.Intake;
import slipway.care.record.intake.Intakes;
import slipway.care.record.trail.Chain;
import slipway.care.record.trail.TrailEntry;
import slipway.exercises.exercise.Language;

class IntakeTest {
    private static final Optional<Intakes.Danger> NOTHING = Optional.empty();

    /** The chart as whoever has opened a code sees it. */
    private static Chart byLink(World world, Chart chart, LinkPurpose purpose, String token) {
        AccessLink link = world.records
                .links()
                .add(
                        chart.episode().id(),
                        purpose,
                        OptionalInt.empty(),
                        token,
                        World.NOON.plus(Duration.ofDays(1)),
                        false,
                        World.PROGRAM);
        var act = new Act(link.id(), Role.PATIENT, World.CLINIC, World.NOON);
        return world.records
                .charts()
                .open(chart.episode().id(), act)
                .chartIfOpen()
                .orElseThrow();
    }

    private static Chart chart(World world) {
        Act act = World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST);
        return world.chart(world.person("Ines Palo", act), act);
    }

    @ParameterizedTest
    @EnumSource
    void whatIsToldIsKeptBesideTheRecordWithItsAlertAndItsTrail(Databases kind) {
        try (var world = new World(kind)) {
            Chart staff = chart(world);
            Chart person = byLink(world, staff, LinkPurpose.INTAKE, "a".repeat(64));
            var danger = new Intakes.Danger("intake-emergency", "yes to saddleNumbness", "ada");
            Intake early = person.intakes()
                    .tell(false, Language.ES, World.json("{\"saddleNumbness\":\"yes\"}"), Optional.of(danger))
                    .orElseThrow();
            Intake whole = person.intakes()
                    .tell(true, Language.ES, World.json("{\"work\":\"panadera\",\"where\":[\"calf\"]}"), NOTHING)
                    .orElseThrow();

            assertThat(staff.intakes().list()).containsExactly(early, whole);
            Alert alert = staff.checkIns().alerts().get(0);
            assertThat(alert.words()).isEqualTo("yes to saddleNumbness");
            assertThat(alert.ownerId()).isEqualTo("ada");
            // Nothing of it is in the record.
            assertThat(staff.section(Section.SCREENING).isEmpty()).isTrue();
            assertThat(staff.section(Section.HISTORY).isEmpty()).isTrue();
            List<TrailEntry> trail =
                    world.records.trail().list(Chain.ofPerson(staff.person().id()), 0, 50);
            assertThat(trail)
                    .filteredOn(entry -> entry.entity().equals("intake"))
                    .hasSize(2);
            assertThat(world.records.trail().verify().breaks()).isEmpty();
            assertThat(world.records.caseload().today(10, World.PROGRAM).get(0).toldAt())
                    .contains(World.NOON.truncatedTo(java.time.temporal.ChronoUnit.MICROS));
        }
    }

    @ParameterizedTest
    @EnumSource
    void aCodeIsDoneOnceEvenIfItIsSentTwiceAtTheSameTime(Databases kind) throws Exception {
        try (var world = new World(kind)) {
            Chart staff = chart(world);
            Chart person = byLink(world, staff, LinkPurpose.INTAKE, "a".repeat(64));
            Callable<Optional<Intake>> done = () -> person.intakes().tell(true, Language.EN, World.json("{}"), NOTHING);
            var both = Executors.newFixedThreadPool(2);
            try {
                for (var each : both.invokeAll(List.of(done, done))) {
                    each.get();
                }
            } finally {
                both.shutdown();
            }
            assertThat(staff.intakes().list()).hasSize(1);
            // A second code of the same person is a telling of its own.
            byLink(world, staff, LinkPurpose.INTAKE, "b".repeat(64))
                    .intakes()
                    .tell(true, Language.EN, World.json("{}"), NOTHING);
            assertThat(staff.intakes().list()).hasSize(2);
        }
    }

    @ParameterizedTest
    @EnumSource
    void aCodeForHomeTellsNothingHereAndThisOneWritesNothingElse(Databases kind) {
        try (var world = new World(kind)) {
            Chart staff = chart(world);
            Chart home = byLink(world, staff, LinkPurpose.GUIDE, "a".repeat(64));
            assertThatIllegalStateException()
                    .isThrownBy(() -> home.intakes().tell(true, Language.EN, World.json("{}"), NOTHING));
            Chart before = byLink(world, staff, LinkPurpose.INTAKE, "b".repeat(64));
            assertThatIllegalStateException()
                    .isThrownBy(() -> before.checkIns().add("check-in-0001", "s", "some-glide", World.json("{}")));
            for (Section section : List.of(Section.HISTORY, Section.SCREENING)) {
                assertThatIllegalStateException().isThrownBy(() -> before.save(section, 0, World.json("{}")));
            }
            assertThat(staff.intakes().list()).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void anErasureLeavesNoWordOfIt(Databases kind) {
        try (var world = new World(kind)) {
            Chart staff = chart(world);
            Chart person = byLink(world, staff, LinkPurpose.INTAKE, "a".repeat(64));
            String episode = staff.episode().id();
            var act = new Act(
                    person.intakes()
                            .tell(false, Language.EN, World.json("{}"), NOTHING)
                            .orElseThrow()
                            .linkId(),
                    Role.PATIENT,
                    World.CLINIC,
                    World.NOON);
            world.records.drafts().save(episode, "intake", 0, "{\"goal\":\"unfinished-word\"}", act);
            var danger = new Intakes.Danger("intake-urgent", "alarm-word", "ada");
            person.intakes().tell(true, Language.EN, World.json("{\"goal\":\"finished-word\"}"), Optional.of(danger));
            assertThat(world.database.holds("finished-word")).isTrue();
            assertThat(world.database.holds("unfinished-word")).isTrue();

            world.records.people().erase(staff.person().id(), "asked for by letter", World.PROGRAM);
            assertThat(world.database.holds("finished-word")).isFalse();
            assertThat(world.database.holds("alarm-word")).isFalse();
            assertThat(world.records.trail().verify().breaks()).isEmpty();
        }
    }
}
