package slipway.care.record.trail;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Chains of random entries: untouched they hold, and whatever is done to one shows. */
class TrailCheckPropertyTest {
    private static final int TRIES = 300;
    private static final Chain CHAIN = Chain.ofPerson("p");

    /** An entry as it stands in the database, with what stands in the table of payloads. */
    private record Row(TrailEntry entry, Optional<TrailPayload> payload) {}

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void anUntouchedChainHolds(long seed) {
        var random = new Random(seed);
        for (int i = 0; i < TRIES; i++) {
            List<Row> rows = chain(random, random.nextInt(12));
            assertThat(check(rows, head(rows))).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6})
    void anErasureLeavesAChainThatHolds(long seed) {
        var random = new Random(seed);
        for (int i = 0; i < TRIES; i++) {
            List<Row> rows = chain(random, 1 + random.nextInt(12));
            rows.replaceAll(row -> new Row(row.entry(), Optional.empty()));
            append(rows, random, Action.ERASE, Optional.empty());
            append(rows, random, Action.READ, Optional.empty());
            assertThat(check(rows, head(rows))).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 8, 9})
    void whateverIsDoneToAChainShows(long seed) {
        var random = new Random(seed);
        for (int i = 0; i < TRIES; i++) {
            List<Row> rows = chain(random, 2 + random.nextInt(12));
            Optional<TrailHead> head = head(rows);
            String done = damage(rows, random);
            assertThat(check(rows, head)).as(done).isNotEmpty();
        }
    }

    private static String damage(List<Row> rows, Random random) {
        int at = random.nextInt(rows.size());
        Row row = rows.get(at);
        switch (random.nextInt(5)) {
            case 0 -> {
                rows.remove(at);
                return "entry removed";
            }
            case 1 -> {
                rows.set(at, new Row(changed(row.entry(), random.nextInt(6)), row.payload()));
                return "entry changed";
            }
            case 2 -> {
                rows.set(at, new Row(row.entry(), Optional.of(new TrailPayload("", "{\"forged\":true}"))));
                return "payload changed";
            }
            case 3 -> {
                int other = (at + 1) % rows.size();
                rows.set(at, rows.get(other));
                rows.set(other, row);
                return "entries exchanged";
            }
            default -> {
                append(rows, random, Action.CHANGE, Optional.empty());
                return "entry added behind the head";
            }
        }
    }

    private static TrailEntry changed(TrailEntry entry, int field) {
        return new TrailEntry(
                entry.chain(),
                entry.seq(),
                field == 0 ? entry.at().plusSeconds(1) : entry.at(),
                field == 1 ? entry.who() + "x" : entry.who(),
                field == 2 ? "LEAD" : entry.role(),
                field == 3 ? Action.EXPORT : entry.action(),
                field == 4 ? entry.entity() + "x" : entry.entity(),
                entry.entityId(),
                field == 5 ? entry.version() + 1 : entry.version(),
                entry.payloadDigest(),
                entry.previousDigest(),
                entry.digest());
    }

    private static List<Row> chain(Random random, int length) {
        var rows = new ArrayList<Row>();
        for (int i = 0; i < length; i++) {
            Optional<TrailPayload> payload = random.nextBoolean()
                    ? Optional.of(new TrailPayload("", "{\"n\":%d}".formatted(random.nextInt())))
                    : Optional.empty();
            append(rows, random, Action.CHANGE, payload);
        }
        return rows;
    }

    private static void append(List<Row> rows, Random random, Action action, Optional<TrailPayload> payload) {
        String previous = rows.isEmpty()
                ? TrailForm.START
                : rows.get(rows.size() - 1).entry().digest();
        TrailEntry open = new TrailEntry(
                CHAIN,
                rows.size() + 1,
                Instant.ofEpochSecond(random.nextInt()),
                "user" + random.nextInt(3),
                "THERAPIST",
                action,
                "section/sites",
                "e",
                random.nextInt(5),
                TrailForm.sha256(payload.map(TrailPayload::form).orElse("")),
                previous,
                "");
        rows.add(new Row(sealed(open), payload));
    }

    private static TrailEntry sealed(TrailEntry open) {
        return new TrailEntry(
                open.chain(),
                open.seq(),
                open.at(),
                open.who(),
                open.role(),
                open.action(),
                open.entity(),
                open.entityId(),
                open.version(),
                open.payloadDigest(),
                open.previousDigest(),
                TrailForm.digest(open));
    }

    private static Optional<TrailHead> head(List<Row> rows) {
        return Optional.of(
                rows.isEmpty()
                        ? new TrailHead(CHAIN, 0, TrailForm.START)
                        : new TrailHead(
                                CHAIN,
                                rows.size(),
                                rows.get(rows.size() - 1).entry().digest()));
    }

    private static List<TrailBreak> check(List<Row> rows, Optional<TrailHead> head) {
        var check = new TrailCheck(CHAIN);
        rows.forEach(row -> check.next(row.entry(), row.payload()));
        return check.end(head);
    }
}
