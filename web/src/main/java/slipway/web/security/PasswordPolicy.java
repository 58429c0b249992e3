package slipway.web.security;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/**
 * Which passwords are taken.
 *
 * <p>Source: NIST SP 800-63B-4 (2025): at least 15 characters as the only factor, 8 with a second one, any characters,
 * no rules of composition, none from a list of common ones.
 */
@Component
public class PasswordPolicy {
    private static final int LEAST_ALONE = 15;
    private static final int LEAST_WITH_SECOND = 8;
    // Room for any sentence; a bound keeps the hash from being given megabytes.
    private static final int MOST = 256;

    private final Set<String> common = readCommon();

    /** Key of the text that says why a password is refused; empty if it is taken. */
    public Optional<String> refusal(String password, boolean secondFactor, String login) {
        int length = password.codePointCount(0, password.length());
        String plain = password.toLowerCase(Locale.ROOT).strip();
        if (length < (secondFactor ? LEAST_WITH_SECOND : LEAST_ALONE)) {
            return Optional.of(secondFactor ? "password.short.second" : "password.short.alone");
        }
        if (length > MOST) {
            return Optional.of("password.long");
        }
        if (common.contains(plain) || plain.equals(login.toLowerCase(Locale.ROOT)) || onlyRepeats(plain)) {
            return Optional.of("password.common");
        }
        return Optional.empty();
    }

    private static boolean onlyRepeats(String password) {
        return password.chars().distinct().count() < 4;
    }

    private static Set<String> readCommon() {
        try (InputStream stream = PasswordPolicy.class.getResourceAsStream("common-passwords.txt")) {
            String text = new String(Objects.requireNonNull(stream).readAllBytes(), StandardCharsets.UTF_8);
            return text.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.strip().toLowerCase(Locale.ROOT))
                    .collect(Collectors.toUnmodifiableSet());
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read common-passwords.txt", e);
        }
    }
}
