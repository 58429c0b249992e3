package slipway.web.security;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import slipway.care.record.access.Passkey;
import slipway.care.record.access.StaffAccount;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What the browser is asked for, in the JSON form of the standard (W3C Web Authentication, level 3, section 5.1). */
final class PasskeyOptions {
    private static final String KIND = "public-key";
    private static final String REQUIRED = "required";

    private PasskeyOptions() {}

    /** An answer of any passkey that the device has for us: which account it is, the answer tells. */
    static ObjectNode enter(RelyingParty party, String challenge) {
        return asked(challenge).put("rpId", party.id()).put("userVerification", REQUIRED);
    }

    /** A new passkey that the device keeps together with the account, so that no name has to be typed. */
    static ObjectNode add(RelyingParty party, String challenge, StaffAccount account, List<Passkey> known) {
        ObjectNode options = asked(challenge).put("attestation", "none");
        options.putObject("rp").put("id", party.id()).put("name", "Slipway");
        options.putObject("user")
                .put("id", handle(account.id()))
                .put("name", account.login())
                .put("displayName", account.displayName());
        ArrayNode kinds = options.putArray("pubKeyCredParams");
        for (PasskeyCheck.Algorithm algorithm : PasskeyCheck.Algorithm.values()) {
            kinds.addObject().put("type", KIND).put("alg", algorithm.cose());
        }
        options.putObject("authenticatorSelection")
                .put("residentKey", REQUIRED)
                .put("requireResidentKey", true)
                .put("userVerification", REQUIRED);
        ArrayNode there = options.putArray("excludeCredentials");
        known.forEach(passkey -> there.addObject().put("type", KIND).put("id", passkey.credentialId()));
        return options;
    }

    private static ObjectNode asked(String challenge) {
        return JsonMapper.shared()
                .createObjectNode()
                .put("challenge", challenge)
                .put("timeout", PasskeyChallenge.VALID.toMillis());
    }

    /** How a device names an account: by an id that says nothing of the person. */
    static String handle(String staffId) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(staffId.getBytes(StandardCharsets.UTF_8));
    }
}
