package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.Role;
import slipway.care.record.access.KeptPasskey;
import slipway.care.record.access.Passkey;
import slipway.care.record.access.PasskeyKey;
import slipway.care.record.access.PasskeyUse;
import slipway.care.record.access.Reach;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.care.record.trail.TrailEntry;

class PasskeysTest {
    private static final String CREDENTIAL = "AbC_-123";
    private static final Instant LATER = World.NOON.plusSeconds(90);

    private static Passkey add(World world, StaffAccount account, String credentialId, long count) {
        return world.records
                .passkeys()
                .add(
                        account.id(),
                        credentialId,
                        "Phone",
                        new PasskeyKey("pQEC", count, true, true),
                        World.act(account, Role.THERAPIST));
    }

    private static boolean use(World world, Passkey passkey, long count, String challenge) {
        return world.records.passkeys().use(new PasskeyUse(passkey.id(), count, false, challenge, LATER));
    }

    @ParameterizedTest
    @EnumSource
    void aPasskeyIsFoundListedUsedAndRemovedWithItsTrail(Databases kind) {
        try (var world = new World(kind)) {
            StaffAccount ada = world.therapist("ada", Reach.OWN);
            Passkey passkey = add(world, ada, CREDENTIAL, 0);
            assertThat(world.records.passkeys().find(CREDENTIAL))
                    .contains(new KeptPasskey(passkey, new PasskeyKey("pQEC", 0, true, true)));
            assertThat(world.records.passkeys().find(CREDENTIAL.toLowerCase(java.util.Locale.ROOT)))
                    .isEmpty();
            assertThat(use(world, passkey, 7, "c1")).isTrue();
            KeptPasskey used = world.records.passkeys().find(CREDENTIAL).orElseThrow();
            assertThat(used.passkey().lastUsedAt()).contains(LATER);
            assertThat(used.key()).isEqualTo(new PasskeyKey("pQEC", 7, true, false));
            world.records.passkeys().remove(ada.id(), passkey.id(), World.act(ada, Role.THERAPIST));
            assertThat(world.records.passkeys().list(ada.id())).isEmpty();
            assertThat(world.records.trail().list(Chain.ofClinic(World.CLINIC), 0, 2))
                    .extracting(TrailEntry::entity, TrailEntry::action)
                    .containsExactly(
                            Tuple.tuple("passkey/removed", Action.CHANGE), Tuple.tuple("passkey", Action.CREATE));
        }
    }

    @ParameterizedTest
    @EnumSource
    void aChallengeCountsOnceAndTheCountOfSignaturesNeverFalls(Databases kind) {
        try (var world = new World(kind)) {
            StaffAccount ada = world.therapist("ada", Reach.OWN);
            Passkey counting = add(world, ada, "counting", 5);
            assertThat(use(world, counting, 5, "c1")).isFalse();
            assertThat(use(world, counting, 0, "c1")).isFalse();
            assertThat(use(world, counting, 6, "c1")).isTrue();
            assertThat(use(world, counting, 7, "c1")).isFalse();
            Passkey silent = add(world, ada, "silent", 0);
            assertThat(use(world, silent, 0, "c1")).isTrue();
            assertThat(use(world, silent, 0, "c1")).isFalse();
            assertThat(use(world, silent, 0, "c2")).isTrue();
        }
    }

    @ParameterizedTest
    @EnumSource
    void ofManyAtOnceWithTheSameAnswerOneIsTaken(Databases kind) throws Exception {
        ExecutorService many = Executors.newFixedThreadPool(6);
        try (var world = new World(kind)) {
            Passkey silent = add(world, world.therapist("ada", Reach.OWN), "silent", 0);
            Callable<Boolean> attempt = () -> use(world, silent, 0, "c1");
            int taken = 0;
            for (Future<Boolean> each :
                    many.invokeAll(IntStream.range(0, 12).mapToObj(i -> attempt).toList())) {
                taken += each.get() ? 1 : 0;
            }
            assertThat(taken).isEqualTo(1);
        } finally {
            many.shutdownNow();
        }
    }

    @ParameterizedTest
    @EnumSource
    void onesOwnAreRemovedOnlyAndACredentialBelongsToOneAccount(Databases kind) {
        try (var world = new World(kind)) {
            StaffAccount ada = world.therapist("ada", Reach.OWN);
            StaffAccount bo = world.therapist("bo", Reach.OWN);
            Passkey passkey = add(world, ada, CREDENTIAL, 0);
            Act act = World.act(bo, Role.THERAPIST);
            assertThatThrownBy(() -> world.records.passkeys().remove(bo.id(), passkey.id(), act))
                    .isInstanceOf(NotThere.class);
            var elsewhere = new Act(ada.id(), Role.THERAPIST, "hill", World.NOON);
            assertThatThrownBy(() -> world.records.passkeys().remove(ada.id(), passkey.id(), elsewhere))
                    .isInstanceOf(NotThere.class);
            assertThatThrownBy(() -> add(world, bo, CREDENTIAL, 0)).isInstanceOf(IllegalArgumentException.class);
            add(world, bo, "other", 0);
            world.records.passkeys().removeAll(ada.id(), World.PROGRAM);
            assertThat(world.records.passkeys().list(ada.id())).isEmpty();
            assertThat(world.records.passkeys().list(bo.id())).hasSize(1);
            assertThat(world.records.trail().verify().breaks()).isEmpty();
        }
    }
}
