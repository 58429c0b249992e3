package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.store.session.KeptSession;

class SessionStoreTest {
    private static final byte[] CONTENT = {0, 1, -1, 127};

    @ParameterizedTest
    @EnumSource
    void aSessionIsFoundUntilItExpires(Databases kind) {
        try (var world = new World(kind)) {
            var sessions = world.store.sessions();
            var end = World.NOON.plus(Duration.ofMinutes(15));
            sessions.save(new KeptSession("secret-id", new byte[0], World.NOON, World.NOON.plusSeconds(1)));
            sessions.save(new KeptSession("secret-id", CONTENT, World.NOON, end));

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
    void theSecretItselfIsNotInTheDatabase(Databases kind) {
        try (var world = new World(kind)) {
            var content = "attributes".getBytes(StandardCharsets.UTF_8);
            world.store.sessions().save(new KeptSession("secret-id", content, World.NOON, World.NOON.plusSeconds(9)));
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
