package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.person.Person;
import slipway.care.record.person.PersonDetails;
import slipway.care.record.remind.Consent;
import slipway.care.record.remind.Due;
import slipway.care.record.remind.MailFault;
import slipway.care.record.remind.Reminders;
import slipway.care.record.remind.SendingReport;

class RemindersTest {
    private static final LocalDate DAY = LocalDate.parse("2026-03-02");
    private static final Instant NOW = World.NOON;
    private static final Instant AGAIN = NOW.plus(Duration.ofMinutes(10));

    private static List<String> due(Reminders reminders, int hour, Instant now) {
        return reminders.due(DAY, hour, now, 100).stream().map(Due::personId).toList();
    }

    @ParameterizedTest
    @EnumSource
    void onlyWhoAgreedAtThisAddressIsDueAndOnlyFromTheHourOn(Databases kind) {
        try (var world = new World(kind)) {
            Act act = World.act(world.therapist("ada", Reach.CLINIC), Role.THERAPIST);
            Reminders reminders = world.records.reminders();
            Person wants = world.person("Ines Palo", act);
            Person moved = world.person("Rui Sand", act);
            world.person("Never Asked", act);
            reminders.agree(wants.id(), 18, act);
            reminders.agree(moved.id(), 18, act);
            world.records
                    .people()
                    .change(moved.id(), 1, withAddress("elsewhere@example.org"), act)
                    .orThrow();
            assertThat(due(reminders, 17, NOW)).isEmpty();
            assertThat(due(reminders, 18, NOW)).containsExactly(wants.id());
            assertThat(due(reminders, 20, NOW)).containsExactly(wants.id());
            assertThat(due(reminders, 21, NOW)).as("late by three hours").isEmpty();
            reminders.agree(moved.id(), 18, act);
            assertThat(due(reminders, 18, NOW)).contains(moved.id());
            assertThat(reminders.due(DAY, 18, NOW, 100).toString()).doesNotContain("@");
            reminders.end(wants.id(), act);
            assertThat(due(reminders, 18, NOW)).containsExactly(moved.id());
        }
    }

    @ParameterizedTest
    @EnumSource
    void ofManyWhoComeAtOnceOneSendsAndADaySentIsDone(Databases kind) throws Exception {
        try (var world = new World(kind)) {
            Act act = World.act(world.therapist("ada", Reach.CLINIC), Role.THERAPIST);
            Reminders reminders = world.records.reminders();
            String id = world.person("Ines Palo", act).id();
            reminders.agree(id, 18, act);
            Due due = reminders.due(DAY, 18, NOW, 100).get(0);
            var takings = new ArrayList<Callable<Boolean>>();
            for (int i = 0; i < 12; i++) {
                String token = "token-" + i;
                takings.add(() -> reminders.take(due, DAY, token, NOW, AGAIN));
            }
            assertThat(all(takings)).containsOnlyOnce(true);
            assertThat(due(reminders, 18, NOW)).isEmpty();
            assertThat(due(reminders, 18, AGAIN)).as("who took it died").containsExactly(id);
            reminders.sent(id, DAY, NOW);
            assertThat(due(reminders, 18, AGAIN)).isEmpty();
            assertThat(reminders.due(DAY.plusDays(1), 18, NOW, 100).get(0).lastSent())
                    .contains(DAY);
            assertThat(reminders.report(World.CLINIC, DAY))
                    .isEqualTo(new SendingReport(1, 0, 0, Optional.empty(), Optional.empty()));
        }
    }

    @ParameterizedTest
    @EnumSource
    void aFailureComesAgainCountsAndIsGivenUpWithTheDay(Databases kind) {
        try (var world = new World(kind)) {
            Act act = World.act(world.therapist("ada", Reach.CLINIC), Role.THERAPIST);
            Reminders reminders = world.records.reminders();
            String id = world.person("Ines Palo", act).id();
            reminders.agree(id, 18, act);
            Due first = reminders.due(DAY, 18, NOW, 100).get(0);
            assertThat(reminders.take(first, DAY, "a", NOW, AGAIN)).isTrue();
            reminders.failed(id, DAY, MailFault.NO_CONNECTION, NOW, Optional.of(AGAIN));
            assertThat(due(reminders, 23, NOW)).isEmpty();
            Due second = reminders.due(DAY, 23, AGAIN, 100).get(0);
            assertThat(second.attempts()).isEqualTo(1);
            assertThat(reminders.take(first, DAY, "b", AGAIN, AGAIN)).isFalse();
            assertThat(reminders.report(World.CLINIC, DAY))
                    .isEqualTo(new SendingReport(0, 1, 0, Optional.of(MailFault.NO_CONNECTION), Optional.of(NOW)));
            reminders.giveUpBefore(DAY.plusDays(1), AGAIN);
            assertThat(due(reminders, 23, AGAIN)).isEmpty();
            assertThat(reminders.report(World.CLINIC, DAY).givenUp()).isEqualTo(1);
            assertThat(reminders.report(World.CLINIC, DAY.plusDays(1)).givenUp())
                    .isZero();
        }
    }

    @ParameterizedTest
    @EnumSource
    void anyTokenThatWentOutStopsAndTheTrailSaysWho(Databases kind) {
        try (var world = new World(kind)) {
            Act act = World.act(world.therapist("ada", Reach.CLINIC), Role.THERAPIST);
            Reminders reminders = world.records.reminders();
            String id = world.person("Ines Palo", act).id();
            reminders.agree(id, 18, act);
            reminders.take(reminders.due(DAY, 18, NOW, 1).get(0), DAY, "old", NOW, AGAIN);
            reminders.sent(id, DAY, NOW);
            assertThat(reminders.stop("unknown", NOW)).isFalse();
            assertThat(reminders.consent(id, act)).map(Consent::holds).contains(true);
            assertThat(reminders.stop("old", AGAIN)).isTrue();
            assertThat(reminders.stop("old", AGAIN.plusSeconds(9))).isTrue();
            Consent ended = reminders.consent(id, act).orElseThrow();
            assertThat(ended.endedAt()).contains(AGAIN);
            assertThat(ended.endedByPerson()).isTrue();
            assertThat(world.records.trail().verify().isIntact()).isTrue();
            assertThat(reminders.due(DAY.plusDays(1), 18, NOW, 100)).isEmpty();
            reminders.agree(id, 9, act);
            assertThat(reminders.consent(id, act)).map(Consent::holds).contains(true);
            reminders.purge(DAY.plusDays(1));
            assertThat(reminders.knowsStop("old")).isFalse();
        }
    }

    @ParameterizedTest
    @EnumSource
    void whoMayNotSeeThePersonAgreesForNobodyAndErasureForgets(Databases kind) {
        try (var world = new World(kind)) {
            Act act = World.act(world.therapist("ada", Reach.OWN), Role.THERAPIST);
            Act other = World.act(world.therapist("bob", Reach.OWN), Role.THERAPIST);
            Reminders reminders = world.records.reminders();
            String id = world.person("Ines Palo", act).id();
            assertThatThrownBy(() -> reminders.agree(id, 18, other)).isInstanceOf(NotThere.class);
            assertThatThrownBy(() -> reminders.end(id, other)).isInstanceOf(NotThere.class);
            assertThatThrownBy(() -> reminders.agree(id, 5, act)).isInstanceOf(IllegalArgumentException.class);
            reminders.agree(id, 18, act);
            assertThat(reminders.consent(id, other)).isEmpty();
            reminders.take(reminders.due(DAY, 18, NOW, 1).get(0), DAY, "old", NOW, AGAIN);
            world.records.people().erase(id, "asked by letter", World.PROGRAM);
            assertThat(due(reminders, 18, AGAIN)).isEmpty();
            assertThat(reminders.knowsStop("old")).isFalse();
        }
    }

    private static PersonDetails withAddress(String address) {
        PersonDetails plain = World.details("Rui Sand");
        return new PersonDetails(
                plain.name(),
                plain.age(),
                plain.sex(),
                plain.statureCm(),
                plain.massKg(),
                plain.language(),
                plain.phone(),
                Optional.of(address),
                plain.invented());
    }

    private static List<Boolean> all(List<Callable<Boolean>> work) throws Exception {
        ExecutorService hands = Executors.newFixedThreadPool(work.size());
        try {
            var results = new ArrayList<Boolean>();
            for (Future<Boolean> each : hands.invokeAll(work)) {
                results.add(each.get());
            }
            return results;
        } finally {
            hands.shutdown();
        }
    }
}
