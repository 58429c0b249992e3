package slipway.app.serve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import slipway.app.console.BadInputException;
import slipway.web.remind.MailSecurity;
import slipway.web.remind.MailSettings;

class MailOptionsTest {
    private static final Optional<String> PUBLIC = Optional.of("https://clinic.example");

    @TempDir
    private Path folder = Path.of("");

    private static MailSettings read(Optional<String> publicAddress, Optional<String> environment, String... options) {
        var given = new MailOptions();
        CommandLine line = new CommandLine(CommandLine.Model.CommandSpec.forAnnotatedObject(new Root()));
        line.addMixin("mail", given);
        line.parseArgs(options);
        return given.settings(publicAddress, environment);
    }

    @Command(name = "test")
    private static final class Root {}

    @Test
    void encryptionIsTheRuleAndThePasswordComesFromFileOrEnvironment() throws IOException {
        Path file = Files.writeString(folder.resolve("secret"), "from the file\nsecond line\n");
        String[] plain = {"--mail-host", "mail.example", "--mail-from", "a@clinic.example"};
        MailSettings settings = read(PUBLIC, Optional.of("from the environment"), plain);
        assertThat(settings.security()).isEqualTo(MailSecurity.STARTTLS);
        assertThat(settings.port()).isEqualTo(587);
        assertThat(settings.password()).as("nobody signs in").isEmpty();
        String[] user = {"--mail-host", "mail.example", "--mail-from", "a@clinic.example", "--mail-user", "u"};
        assertThat(read(PUBLIC, Optional.of("from the environment"), user).password())
                .contains("from the environment");
        String[] both = {
            "--mail-host",
            "mail.example",
            "--mail-from",
            "a@clinic.example",
            "--mail-user",
            "u",
            "--mail-password-file",
            file.toString()
        };
        assertThat(read(PUBLIC, Optional.of("from the environment"), both).password())
                .contains("from the file");
        assertThatThrownBy(() -> read(PUBLIC, Optional.empty(), user))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("SLIPWAY_MAIL_PASSWORD");
    }

    @Test
    void whatCannotBeIsRefusedAtTheStart() {
        String[] plain = {"--mail-host", "mail.example", "--mail-from", "a@clinic.example"};
        assertThatThrownBy(() -> read(Optional.empty(), Optional.empty(), plain))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("--public-address");
        String[] open = {"--mail-host", "mail.example", "--mail-from", "a@clinic.example", "--mail-security", "none"};
        assertThatThrownBy(() -> read(PUBLIC, Optional.empty(), open))
                .isInstanceOf(BadInputException.class)
                .hasMessageContaining("plain");
    }
}
