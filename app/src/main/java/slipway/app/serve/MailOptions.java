package slipway.app.serve;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;
import slipway.app.console.BadInputException;
import slipway.app.console.InputFiles;
import slipway.web.remind.MailSecurity;
import slipway.web.remind.MailSettings;

/** The mail server for reminders. */
final class MailOptions {
    /** Never on the command line, which others on the machine can read. */
    private static final String PASSWORD = "SLIPWAY_MAIL_PASSWORD";

    @Option(
            names = "--mail-host",
            required = true,
            paramLabel = "HOST",
            description = "Send reminders to people who want them, by this mail server (SMTP); needs --public-address.")
    private String host = "";

    @Option(
            names = "--mail-from",
            required = true,
            paramLabel = "ADDRESS",
            description = "The address that reminders come from, for example reminders@clinic.example.")
    private String from = "";

    @Option(
            names = "--mail-port",
            paramLabel = "PORT",
            defaultValue = "587",
            description = "TCP port of the mail server; ${DEFAULT-VALUE} if left out.")
    private int port;

    @Option(
            names = "--mail-security",
            paramLabel = "WAY",
            defaultValue = "starttls",
            description = {
                "starttls, tls (from the first byte, mostly port 465), or none for a mail server on this machine;",
                "${DEFAULT-VALUE} if left out. Without encryption nothing is sent elsewhere."
            })
    private String security = "";

    @Option(names = "--mail-user", paramLabel = "USER", description = "Account at the mail server, if it asks for one.")
    private Optional<String> user = Optional.empty();

    @Option(
            names = "--mail-password-file",
            paramLabel = "FILE",
            description = "A file with the password of the account in its first line; without it " + PASSWORD + ".")
    private Optional<Path> passwordFile = Optional.empty();

    /**
     * What these options ask for.
     *
     * @param publicAddress where the links of a reminder lead
     * @throws BadInputException if something is missing or cannot be
     */
    MailSettings settings(Optional<String> publicAddress) {
        return settings(publicAddress, Optional.ofNullable(System.getenv(PASSWORD)));
    }

    /** The same with the password that is in the environment. */
    MailSettings settings(Optional<String> publicAddress, Optional<String> fromEnvironment) {
        String address = publicAddress.orElseThrow(
                () -> new BadInputException("slipway: --mail-host needs --public-address: a reminder has links in it"));
        Optional<String> password =
                user.flatMap(name -> passwordFile.map(MailOptions::firstLine).or(() -> fromEnvironment));
        if (user.isPresent() && password.isEmpty()) {
            throw new BadInputException("slipway: --mail-user needs --mail-password-file, or " + PASSWORD);
        }
        try {
            return new MailSettings(host, port, way(), user, password, from, address);
        } catch (IllegalArgumentException e) {
            throw new BadInputException("slipway: " + e.getMessage());
        }
    }

    private MailSecurity way() {
        if (!security.matches("starttls|tls|none")) {
            throw new BadInputException("slipway: --mail-security must be starttls, tls or none, was " + security);
        }
        return MailSecurity.valueOf(security.toUpperCase(Locale.ROOT));
    }

    private static String firstLine(Path file) {
        return new String(InputFiles.read(file), StandardCharsets.UTF_8)
                .lines()
                .findFirst()
                .orElse("");
    }
}
