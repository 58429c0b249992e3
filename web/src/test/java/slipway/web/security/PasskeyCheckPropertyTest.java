package slipway.web.security;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import slipway.care.record.access.KeptPasskey;
import slipway.care.record.access.Passkey;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Whatever is sent instead of an answer gets a refusal, never a fault: anybody on the network may send it. */
class PasskeyCheckPropertyTest {
    private static final RelyingParty PARTY = new RelyingParty("localhost", "http://localhost:1");
    private static final String CHALLENGE = "AAECAwQFBgcICQoLDA0ODxAREhMUFRYXGBkaGxwdHh8";
    private static final String MAKE =
            "{\"challenge\":\"" + CHALLENGE + "\",\"rp\":{\"id\":\"localhost\"},\"user\":{\"id\":\"YWRh\"}}";
    private static final String ENTER = "{\"challenge\":\"" + CHALLENGE + "\",\"rpId\":\"localhost\"}";
    private static final List<String> ODD = List.of(
            "null", "[]", "{}", "7", "true", "\"\"", "\"%%%\"", "\"AA\"", "\"é\"", "[null]", "{\"a\":1}", "1e999");

    private final SoftKey key = new SoftKey(PARTY.origin());
    private final String made = key.make(MAKE);
    private final String entered = key.enter(ENTER);

    private static void everyDamage(String whole, UnaryOperator<String> look) {
        for (String damaged : damaged(whole)) {
            assertThatCode(() -> look.apply(damaged)).as(damaged).doesNotThrowAnyException();
        }
    }

    /** With each value left out or replaced, and with letters of it changed. */
    private static List<String> damaged(String whole) {
        var all = new ArrayList<>(ODD);
        all.addAll(List.of("", "{", whole.substring(0, whole.length() / 2), "[".repeat(5000)));
        for (String path : List.of("", "/response")) {
            JsonNode node = JsonMapper.shared().readTree(whole).at(path);
            for (String name : List.copyOf(node.propertyNames())) {
                all.add(with(whole, path, name, null));
                ODD.forEach(odd -> all.add(with(whole, path, name, odd)));
            }
        }
        var random = new Random(27);
        for (int i = 0; i < 2000; i++) {
            var letters = new StringBuilder(whole);
            for (int n = random.nextInt(3); n >= 0; n--) {
                letters.setCharAt(random.nextInt(letters.length()), "AZaz09-_{}[]\",:".charAt(random.nextInt(15)));
            }
            all.add(letters.toString());
        }
        return all;
    }

    private static String with(String whole, String path, String name, @Nullable String value) {
        JsonNode root = JsonMapper.shared().readTree(whole);
        ObjectNode node = (ObjectNode) root.at(path);
        node.remove(name);
        String bare = root.toString();
        if (value == null) {
            return bare;
        }
        node.put(name, "REPLACED");
        return root.toString().replace("\"REPLACED\"", value);
    }

    @Test
    void theWholeOnesAreTaken() {
        assertThat(PasskeyCheck.made(PARTY, CHALLENGE, made)).isPresent();
        assertThat(PasskeyCheck.read(entered)).isPresent();
    }

    @Test
    void damagedNewPasskeysAreRefused() {
        everyDamage(made, json -> PasskeyCheck.made(PARTY, CHALLENGE, json).toString());
    }

    @Test
    void damagedAnswersAreReadOrRefused() {
        var kept = new KeptPasskey(
                new Passkey("1", "AA", "ada", "Phone", Instant.EPOCH, Optional.empty()),
                PasskeyCheck.made(PARTY, CHALLENGE, made).orElseThrow().key());
        everyDamage(
                entered,
                json -> PasskeyCheck.read(json)
                        .map(answer -> PasskeyCheck.verdict(PARTY, CHALLENGE, kept, answer))
                        .toString());
    }
}
