package slipway.care.kept;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class KeptAnswersTest {
    private final KeptAnswers<String, Integer> kept = new KeptAnswers<>(2);
    private final AtomicInteger worked = new AtomicInteger();

    @Test
    void worksOutOnceAndForgetsWhatNobodyAskedForLongest() {
        assertThat(kept.get("a", worked::incrementAndGet)).isEqualTo(1);
        assertThat(kept.get("b", worked::incrementAndGet)).isEqualTo(2);
        assertThat(kept.get("a", worked::incrementAndGet)).isEqualTo(1);
        assertThat(kept.get("c", worked::incrementAndGet)).isEqualTo(3);
        assertThat(kept.get("a", worked::incrementAndGet)).isEqualTo(1);
        assertThat(kept.get("b", worked::incrementAndGet)).isEqualTo(4);
    }

    @Test
    void whatFailsIsThrownAsItIsAndTriedAnew() {
        assertThatThrownBy(() -> kept.get("a", () -> {
                    throw new IllegalArgumentException("no");
                }))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no");
        assertThat(kept.get("a", worked::incrementAndGet)).isEqualTo(1);
    }

    @Test
    @Timeout(20)
    void noMoreAreWorkedOutAtOnceThanThereIsRoomFor() {
        var narrow = new KeptAnswers<Integer, Integer>(8, 1);
        var now = new AtomicInteger();
        var most = new AtomicInteger();
        List<CompletableFuture<Integer>> all = IntStream.range(0, 6)
                .mapToObj(i -> CompletableFuture.supplyAsync(() -> narrow.get(i, () -> {
                    most.accumulateAndGet(now.incrementAndGet(), Math::max);
                    IntStream.range(0, 100_000).forEach(spin -> Thread.onSpinWait());
                    return now.decrementAndGet();
                })))
                .toList();
        all.forEach(CompletableFuture::join);
        assertThat(most.get()).isEqualTo(1);
    }

    @Test
    @Timeout(20)
    void oneThatTakesLongHoldsUpNobodyElse() throws Exception {
        var begun = new CountDownLatch(1);
        var end = new CountDownLatch(1);
        CompletableFuture<Integer> slow = CompletableFuture.supplyAsync(() -> kept.get("slow", () -> {
            begun.countDown();
            try {
                assertThat(end.await(15, TimeUnit.SECONDS)).isTrue();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            return 7;
        }));
        begun.await();
        assertThat(kept.get("quick", () -> 1)).isEqualTo(1);
        end.countDown();
        assertThat(slow.get()).isEqualTo(7);
    }
}
