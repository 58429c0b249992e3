package slipway.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;

class PasswordHashesTest {
    private static final int AT_ONCE = 2;

    /** Memory, passes and lanes stand in the hash itself (its text form is that of the reference implementation). */
    @Test
    void aHashHasTheStrengthOfTheStandardAndIsNeverTheSameTwice() {
        PasswordHashes hashes = PasswordHashes.onThisMachine();
        String hash = String.valueOf(hashes.encode("a long sentence for tests"));
        assertThat(hash).startsWith("$argon2id$v=19$m=19456,t=2,p=1$");
        assertThat(hash).isNotEqualTo(hashes.encode("a long sentence for tests"));
        assertThat(hashes.matches("a long sentence for tests", hash)).isTrue();
        assertThat(hashes.matches("a long sentence for test", hash)).isFalse();
    }

    @Test
    void anOlderAndWeakerHashStillOpens() {
        String older = new Argon2PasswordEncoder(16, 32, 1, 1 << 14, 2).encode("a long sentence for tests");
        assertThat(PasswordHashes.onThisMachine().matches("a long sentence for tests", older))
                .isTrue();
        assertThat(PasswordHashes.onThisMachine().upgradeEncoding(older)).isTrue();
    }

    @Test
    void manySignInsAtOnceTakeTurns() throws Exception {
        var counting = new Counting();
        var hashes = new PasswordHashes(counting, AT_ONCE);
        var threads = Executors.newFixedThreadPool(16);
        try {
            var answers = new ArrayList<Future<Boolean>>();
            for (int i = 0; i < 16; i++) {
                answers.add(threads.submit(() -> hashes.matches("x", "y")));
            }
            // Both places are taken now; the fourteen others can only wait.
            counting.arrived.await();
            counting.goOn.countDown();
            for (Future<Boolean> answer : answers) {
                assertThat(answer.get()).isTrue();
            }
        } finally {
            threads.shutdownNow();
        }
        assertThat(counting.most.get()).isEqualTo(AT_ONCE);
    }

    /** A hash that holds everybody until it is told to go on, and counts who is in at once. */
    private static final class Counting implements PasswordEncoder {
        private final CountDownLatch arrived = new CountDownLatch(AT_ONCE);
        private final CountDownLatch goOn = new CountDownLatch(1);
        private final AtomicInteger now = new AtomicInteger();
        private final AtomicInteger most = new AtomicInteger();

        @Override
        public @Nullable String encode(@Nullable CharSequence password) {
            return "y";
        }

        @Override
        public boolean matches(@Nullable CharSequence password, @Nullable String encoded) {
            most.accumulateAndGet(now.incrementAndGet(), Math::max);
            arrived.countDown();
            try {
                goOn.await();
                return true;
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return false;
            } finally {
                now.decrementAndGet();
            }
        }
    }
}
