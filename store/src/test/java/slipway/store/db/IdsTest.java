package slipway.store.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class IdsTest {
    private static final Instant AT = Instant.parse("2026-03-02T09:00:00.123Z");

    private final Ids ids = new Ids();

    @Test
    void idsOfOneMillisecondRiseInTheOrderTheyWereAskedFor() {
        var made = IntStream.range(0, 5000).mapToObj(each -> ids.next(AT)).toList();
        assertThat(made).doesNotHaveDuplicates().isSorted();
    }

    @Test
    void eachIsOfVersionSevenAndHoldsItsTime() {
        for (int each = 0; each < 100; each++) {
            UUID made = UUID.fromString(ids.next(AT));
            assertThat(made.version()).isEqualTo(7);
            assertThat(made.variant()).isEqualTo(2);
            assertThat(made.getMostSignificantBits() >>> 16).isEqualTo(AT.toEpochMilli());
        }
    }

    @Test
    void anIdOfALaterTimeSortsAfterAllEarlierOnes() {
        String early = ids.next(AT);
        String late = ids.next(AT.plusMillis(1));
        assertThat(ids.next(AT)).isLessThan(late);
        assertThat(early).isLessThan(late);
    }
}
