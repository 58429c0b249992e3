package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.access.StaffAccount;
import slipway.store.session.KeptSession;

class SessionStoreTest {
    private static final byte[] CONTENT = {0, 1, -1, 127};

    @ParameterizedTest
    @EnumSource
    void aSessionIsFoundUntilItExpires(Databases kind) {
        try (var world = new World(kind)) {
            var sessions = world.store.sessions();
            var end = World.NOON.plus(Duration.ofMinutes(15));
            sessions.add(
                    new KeptSession("secret-id", Optional.empty(), new byte[0], World.NOON, World.NOON.plusSeconds(1)));
            sessions.change(new KeptSession("secret-id", Optional.empty(), CONTENT, World.NOON, end));

            assertThat(sessions.find("secret-id", World.NOON.plusSeconds(2))
                            .orElseThrow()
                            .content())
                    .isEqualTo(CONTENT);
            assertThat(sessions.find("secret-id", end)).isEmpty();
            assertThat(sessions.deleteExpired(end)).isEqualTo(1);
            assertThat(sessions.find("secret-id", World.NOON)).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void aSessionEndsWithItsAccountAndStaysAway(Databases kind) {
        try (var world = new World(kind)) {
            var sessions = world.store.sessions();
            var staff = world.records.staff();
            var account = staff.add("ada", "A", Set.of(Role.THERAPIST), Reach.OWN, "hash", World.PROGRAM);
            var other = staff.add("bo", "B", Set.of(Role.THERAPIST), Reach.OWN, "hash", World.PROGRAM);
            var end = World.NOON.plusSeconds(9);
            var open = new KeptSession("of-ada", Optional.of(account.id()), CONTENT, World.NOON, end);
            sessions.add(open);
            sessions.add(new KeptSession("of-bo", Optional.of(other.id()), CONTENT, World.NOON, end));
            sessions.add(new KeptSession("of-nobody", Optional.empty(), CONTENT, World.NOON, end));
            staff.change(
                    new StaffAccount(account.id(), "ada", "A", World.CLINIC, account.roles(), Reach.OWN, false, 1),
                    World.PROGRAM);

            // An answer under way when the account was blocked ends after it.
            sessions.change(open);
            assertThat(sessions.find("of-ada", World.NOON)).isEmpty();
            // A sign-in under way then.
            sessions.add(open);
            assertThat(sessions.find("of-ada", World.NOON)).isEmpty();
            assertThat(sessions.find("of-bo", World.NOON)).isPresent();
            assertThat(sessions.find("of-nobody", World.NOON)).isPresent();
        }
    }

    @ParameterizedTest
    @EnumSource
    void otherRolesAndAnotherPasswordEndSessionsAnotherNameDoesNot(Databases kind) {
        try (var world = new World(kind)) {
            var sessions = world.store.sessions();
            var staff = world.records.staff();
            var roles = Set.of(Role.THERAPIST);
            String id = staff.add("ada", "A", roles, Reach.OWN, "hash", World.PROGRAM)
                    .id();
            var open = new KeptSession("of-ada", Optional.of(id), CONTENT, World.NOON, World.NOON.plusSeconds(9));
            sessions.add(open);
            staff.change(new StaffAccount(id, "ada", "Ada", World.CLINIC, roles, Reach.TEAM, true, 1), World.PROGRAM);
            assertThat(sessions.find("of-ada", World.NOON)).isPresent();
            staff.change(
                    new StaffAccount(id, "ada", "Ada", World.CLINIC, Set.of(Role.ASSISTANT), Reach.TEAM, true, 2),
                    World.PROGRAM);
            assertThat(sessions.find("of-ada", World.NOON)).isEmpty();
            sessions.add(open);
            staff.setPassword(id, "other", World.PROGRAM);
            assertThat(sessions.find("of-ada", World.NOON)).isEmpty();
        }
    }

    @ParameterizedTest
    @EnumSource
    void theSecretItselfIsNotInTheDatabase(Databases kind) {
        try (var world = new World(kind)) {
            var content = "attributes".getBytes(StandardCharsets.UTF_8);
            world.store
                    .sessions()
                    .add(new KeptSession(
                            "secret-id", Optional.empty(), content, World.NOON, World.NOON.plusSeconds(9)));
            assertThat(world.database.holds("secret-id")).isFalse();
        }
    }

    @ParameterizedTest
    @EnumSource
    void aKeyIsMadeOnceAndIsTheSameForEveryServer(Databases kind) {
        try (var world = new World(kind)) {
            byte[] key = world.store.keys().get("test", World.NOON);
            assertThat(key).hasSize(32);
            assertThat(world.store.keys().get("test", World.NOON.plusSeconds(9)))
                    .isEqualTo(key);
            assertThat(world.store.keys().get("other", World.NOON)).isNotEqualTo(key);
        }
    }
}
