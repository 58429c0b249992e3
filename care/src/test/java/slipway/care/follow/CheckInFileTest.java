package slipway.care.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.MistakesException;
import slipway.reasoning.response.checkin.CheckIn;

/** A file of check-ins is taken whole or not at all, and every mistake is named with its place. */
class CheckInFileTest {
    private static final String HEADER = String.join(",", CheckInColumn.keys()) + "\n";
    private static final String GOOD =
            "c1,s1,glide,2026-03-02T07:30+01:00,2,5,3,tingling,,calf,2,,no,no,no,,2026-03-02T07:45+01:00\n";
    private static final String LATER =
            "c2,s1,glide,2026-03-02T07:30+01:00,,,,,,,,same,no,no,no,,2026-03-03T07:20+01:00\n";

    @Test
    void readsASessionAndItsMorning() {
        List<CheckIn> read = read(HEADER + GOOD + LATER);
        assertThat(read).hasSize(2);
        assertThat(read.get(0).worst()).hasValue(3);
        assertThat(read.get(1).nextMorning()).isPresent();
        assertThat(read("\uFEFF" + HEADER + GOOD)).hasSize(1);
        assertThat(read(HEADER)).isEmpty();
    }

    @Test
    void namesEveryMistakeAtOnceWithLineAndColumn() {
        String bad = HEADER
                + GOOD
                + "c2,s2,glid,2026-03-03T07:30+01:00,11,5,3,tingle,,calf,-2,,no,maybe,no,,2026-03-03T07:45+01:00\n"
                + "c3,s3,glide,yesterday,2,5,3,pain,,calf,2,,no,no,no,,2026-03-03T07:45+01:00\n"
                + "c4,s4\n";
        List<Mistake> mistakes = mistakes(bad);
        assertThat(mistakes)
                .extracting(mistake -> mistake.line() + " " + mistake.path())
                .contains(
                        "3 exercise", "3 before", "3 kind", "3 settle_minutes", "3 new_weakness", "4 started_at", "5 ");
        assertThat(mistakes)
                .filteredOn(mistake -> mistake.path().equals("exercise"))
                .allSatisfy(mistake -> assertThat(mistake.message()).contains("glide"));
        assertThat(mistakes)
                .filteredOn(mistake -> mistake.path().equals("before"))
                .allSatisfy(mistake -> assertThat(mistake.column()).isEqualTo(35));
    }

    @Test
    void wrongColumnsAreNamed() {
        assertThat(mistakes(HEADER.replace("worst", "wurst") + GOOD))
                .extracting(Mistake::message)
                .anySatisfy(message -> assertThat(message).contains("worst").contains("wurst"));
        assertThat(mistakes(HEADER.replace(",reported_at", "") + GOOD))
                .extracting(Mistake::message)
                .anySatisfy(message -> assertThat(message).contains("reported_at is missing"));
        assertThat(mistakes("")).hasSize(1);
    }

    @Test
    void duplicatesGapsAndDatesOutOfOrderAreNamed() {
        assertThat(mistakes(HEADER + GOOD + GOOD.replace(",3,tingling", ",6,tingling")))
                .extracting(Mistake::message)
                .containsExactly("c1 is in line 2 with other content");
        assertThat(mistakes(HEADER + LATER))
                .extracting(Mistake::message)
                .containsExactly("no row tells how this session went");
        assertThat(mistakes(HEADER + GOOD.replace("2026-03-02T07:45", "2026-02-20T07:45")))
                .extracting(Mistake::path)
                .containsExactly("reported_at");
        assertThat(mistakes(HEADER + GOOD.replace(",2,,no", ",2,same,no")))
                .extracting(Mistake::path)
                .containsExactly("next_morning");
        assertThat(mistakes(HEADER + GOOD + GOOD.replace("c1", "c9").replace("02T07:30", "01T07:30")))
                .extracting(Mistake::path)
                .containsExactly("started_at");
    }

    @Test
    void theSameRowTwiceIsNoMistake() {
        assertThat(read(HEADER + GOOD + GOOD)).hasSize(2);
    }

    /** Whatever is broken in a good file, it is read or refused with mistakes, never with another failure. */
    @Test
    void brokenTextIsReadOrRefused() {
        byte[] good = (HEADER + GOOD + LATER).getBytes(StandardCharsets.UTF_8);
        var random = new Random(8);
        int refused = 0;
        for (int i = 0; i < 2000; i++) {
            byte[] broken = good.clone();
            for (int k = 0; k < 1 + i % 3; k++) {
                broken[random.nextInt(broken.length)] = (byte) random.nextInt(256);
            }
            try {
                CheckInFile.read("broken.csv", broken, List.of("glide"));
            } catch (MistakesException e) {
                refused++;
                assertThat(e.mistakes()).isNotEmpty();
            }
        }
        assertThat(refused).isGreaterThan(1500);
    }

    @Test
    void largeFilesAreRefused() {
        assertThatThrownBy(() -> CheckInFile.read("large.csv", new byte[CheckInFile.MAX_BYTES + 1], List.of()))
                .isInstanceOf(MistakesException.class);
    }

    private static List<CheckIn> read(String text) {
        return CheckInFile.read("test.csv", text.getBytes(StandardCharsets.UTF_8), List.of("glide"));
    }

    private static List<Mistake> mistakes(String text) {
        return catchThrowableOfType(MistakesException.class, () -> read(text)).mistakes();
    }
}
