package slipway.app;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class MainTest {
    @Test
    void withoutACommandExplainsItselfAndItsCautions() {
        Run run = Run.of();
        assertThat(run.status()).isZero();
        assertThat(run.out())
                .contains("Not a diagnosis", "emergency number", "Exit status:", "schema")
                .isEqualTo(Run.of("--help").out());
        assertThat(run.out().lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    }

    @Test
    void everyCommandHasAHelpThatSaysWhatItDoes() {
        for (CommandLine command : Main.commandLine().getSubcommands().values()) {
            String name = command.getCommandName();
            Run run = Run.of(name, "--help");
            assertThat(run.status()).as(name).isZero();
            assertThat(run.out()).as(name).contains("Usage: slipway " + name).hasSizeGreaterThan(300);
        }
    }

    @Test
    void namesTheCommandThatWasProbablyMeant() {
        Run run = Run.of("shcema", "case");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("Did you mean", "schema", "Try 'slipway --help'.");
        assertThat(run.out()).isEmpty();
    }
}
