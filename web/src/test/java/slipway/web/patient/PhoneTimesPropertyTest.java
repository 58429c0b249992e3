package slipway.web.patient;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipway.care.casefile.CaseFiles;
import slipway.care.follow.CheckInFile;
import slipway.care.follow.Follow;
import slipway.care.visit.Visit;
import slipway.care.visit.VisitPlan;
import slipway.reasoning.response.checkin.CheckIn;
import slipway.reasoning.response.propose.Followed;

/** Reports that were made without network arrive late, in any order, from a phone whose clock is wrong. */
class PhoneTimesPropertyTest {
    private static final Instant GIVEN = Instant.parse("2026-03-02T07:00:00Z");
    private static final VisitPlan VISIT = visit();
    private static final String EXERCISE =
            VISIT.given().get(0).range().candidate().id();

    private static VisitPlan visit() {
        try {
            Path file = Path.of("..", "examples", "low-irritability-stiff.yaml");
            return Visit.plan(CaseFiles.read(Files.readAllBytes(file), "example"), "test");
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A report as it lies on the phone. */
    private record Waiting(Instant made, Map<String, String> fields) {}

    @ParameterizedTest
    @ValueSource(longs = {-7_200_000, 4_000_000_000L})
    void theOrderOfArrivalDoesNotMatterOnceAllHaveArrived(long clockOffMs) {
        var random = new Random(20_26);
        List<Waiting> waiting = week(random, clockOffMs);
        Followed atOnce = follow(waiting, clockOffMs, new long[waiting.size()]);
        for (int round = 0; round < 3; round++) {
            // Each waits up to four days by itself: later ones overtake earlier ones.
            long[] delays = random.longs(waiting.size(), 0, Duration.ofDays(4).toSeconds())
                    .toArray();
            List<Waiting> shuffled = new ArrayList<>(waiting);
            Collections.shuffle(shuffled, random);
            Followed later = follow(shuffled, clockOffMs, delays);
            assertThat(later.state().courses()).isEqualTo(atOnce.state().courses());
            assertThat(later.state().lock()).isEqualTo(atOnce.state().lock());
            // With the estimated chances, so that the estimate is the same, too.
            assertThat(later.results()).isEqualTo(atOnce.results());
        }
    }

    private static List<Waiting> week(Random random, long clockOffMs) {
        var waiting = new ArrayList<Waiting>();
        for (int i = 0; i < 14; i++) {
            Instant made =
                    GIVEN.plus(Duration.ofHours(12L * i + random.nextInt(5))).plusSeconds(600);
            int worst = random.nextInt(5);
            var fields = new HashMap<String, String>();
            fields.put("id", "report-%04d".formatted(i));
            fields.put("exercise", EXERCISE);
            fields.put("done", "all");
            fields.put("planned", "3");
            fields.put("before", "1");
            fields.put("worst", String.valueOf(worst));
            fields.put("kind", worst > 1 ? "tingling" : "none");
            fields.put("settle", List.of("0", "2", "10", "30").get(random.nextInt(4)));
            fields.put("none", "yes");
            fields.put("zone", "60");
            fields.put("madeAt", String.valueOf(made.toEpochMilli() + clockOffMs));
            fields.put("begunAt", String.valueOf(made.minusSeconds(480).toEpochMilli() + clockOffMs));
            waiting.add(new Waiting(made, fields));
        }
        return waiting;
    }

    private static Followed follow(List<Waiting> arriving, long clockOffMs, long[] delaysSeconds) {
        var read = new ArrayList<CheckIn>();
        for (int i = 0; i < arriving.size(); i++) {
            Instant received = arriving.get(i).made().plusSeconds(delaysSeconds[i]);
            var fields = new HashMap<>(arriving.get(i).fields());
            fields.put("sentAt", String.valueOf(received.toEpochMilli() + clockOffMs));
            Report report = new Report(fields);
            var body = report.body(PhoneTimes.of(report.times(), received, GIVEN, ZoneOffset.UTC));
            byte[] row = CheckInFile.text(body).getBytes(StandardCharsets.UTF_8);
            read.addAll(CheckInFile.read("report", row, List.of(EXERCISE)));
        }
        return Follow.of(VISIT, read, List.of(), Optional.empty());
    }

    @Test
    void aClockThatWasSetMeanwhileOrTellsNonsenseGivesABoundAndSaysSo() {
        Instant received = GIVEN.plus(Duration.ofDays(2));
        for (long[] told : new long[][] {
            {2000, 1000},
            {-5, 10},
            {0, Long.MAX_VALUE / 2},
            {1, Duration.ofDays(9).toMillis()}
        }) {
            PhoneTimes times = PhoneTimes.of(
                    new PhoneTimes.Told(
                            OptionalLong.empty(),
                            OptionalLong.of(told[0]),
                            OptionalLong.of(told[1]),
                            OptionalLong.empty()),
                    received,
                    GIVEN,
                    ZoneOffset.UTC);
            assertThat(times.unsure()).isTrue();
            assertThat(times.reportedAt().toInstant()).isBetween(GIVEN, received);
            assertThat(times.startedAt()).isBeforeOrEqualTo(times.reportedAt());
        }
    }

    @Test
    void aPhoneThatTellsNothingReportsNow() {
        var nothing = new PhoneTimes.Told(
                OptionalLong.empty(), OptionalLong.empty(), OptionalLong.empty(), OptionalLong.empty());
        PhoneTimes times = PhoneTimes.of(nothing, GIVEN.plusSeconds(60), GIVEN, ZoneOffset.ofHours(2));
        assertThat(times.unsure()).isFalse();
        assertThat(times.reportedAt().toInstant()).isEqualTo(GIVEN.plusSeconds(60));
        assertThat(times.reportedAt().getOffset()).isEqualTo(ZoneOffset.ofHours(2));
    }
}
