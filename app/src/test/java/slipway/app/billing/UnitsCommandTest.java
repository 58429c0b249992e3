package slipway.app.billing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slipway.app.Run;

class UnitsCommandTest {
    @Test
    void firstLineIsTheAnswerAndTheAllocationFollows() {
        Run run = Run.of("units", "24,23", "--rule", "eight-minute");
        assertThat(run.status()).isZero();
        assertThat(run.out().lines().toList())
                .startsWith("3 units")
                .anyMatch(line -> line.matches(" *A +24 min +2 units.*"))
                .anyMatch(line -> line.matches(" *B +23 min +1 unit"));
    }

    @Test
    void namesTheTieAndShowsBothRulesWhenNoneIsGiven() {
        Run run = Run.of("units", "manual=20, exercise=20");
        assertThat(run.out()).contains("3 units", "Your choice: manual, exercise", "2 units", "midpoint");
    }

    @Test
    void allMistakesAreToldAtOnce() {
        Run run = Run.of("units", "24,x,-3,,A=481,=5", "--rule", "both");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines().toList())
                .hasSize(7)
                .anyMatch(line -> line.contains("\"x\" (service 2 of 6)"))
                .anyMatch(line -> line.contains("\"-3\""))
                .anyMatch(line -> line.contains("A stands twice"))
                .anyMatch(line -> line.contains("within 0 and 480, were \"481\""))
                .anyMatch(line -> line.contains("1 to 40 letters"))
                .anyMatch(line -> line.startsWith("--rule must be eight-minute or midpoint"));
    }
}
