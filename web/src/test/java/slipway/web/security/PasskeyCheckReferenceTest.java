package slipway.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slipway.care.record.access.KeptPasskey;
import slipway.care.record.access.Passkey;
import slipway.care.record.access.PasskeyKey;
import slipway.web.security.PasskeyCheck.Verdict;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Against the test vectors of W3C Web Authentication, level 3, section 16: 16.2 "ES256 credential with no attestation",
 * 16.3 "ES256 credential with self attestation", 16.4 "... with crossOrigin true". Their site is https://example.org. In
 * the answers of 16.2 and 16.3 the owner has not shown who they are, which we always ask for.
 */
class PasskeyCheckReferenceTest {
    private static final RelyingParty PARTY = new RelyingParty("example.org", "https://example.org");
    private static final String OWNER = "owner";

    private static final String MADE_16_2 =
            "7b2274797065223a22776562617574686e2e637265617465222c226368616c6c656e6765223a22414d4d507434557878475453746e63647134313759447742466938767049612d7077386f4f755657345441222c226f726967696e223a2268747470733a2f2f6578616d706c652e6f7267222c2263726f73734f726967696e223a66616c73652c22657874726144617461223a22636c69656e74446174614a534f4e206d617920626520657874656e6465642077697468206164646974696f6e616c206669656c647320696e20746865206675747572652c207375636820617320746869733a20426b5165446a646354427258426941774a544c453551227d";
    private static final String OBJECT_16_2 =
            "a363666d74646e6f6e656761747453746d74a068617574684461746158a4bfabc37432958b063360d3ad6461c9c4735ae7f8edd46592a5e0f01452b2e4b559000000008446ccb9ab1db374750b2367ff6f3a1f0020f91f391db4c9b2fde0ea70189cba3fb63f579ba6122b33ad94ff3ec330084be4a5010203262001215820afefa16f97ca9b2d23eb86ccb64098d20db90856062eb249c33a9b672f26df61225820930a56b87a2fca66334b03458abf879717c12cc68ed73290af2e2664796b9220";
    private static final String CREDENTIAL_16_2 = "f91f391db4c9b2fde0ea70189cba3fb63f579ba6122b33ad94ff3ec330084be4";
    private static final String KEY_16_2 =
            "a5010203262001215820afefa16f97ca9b2d23eb86ccb64098d20db90856062eb249c33a9b672f26df61225820930a56b87a2fca66334b03458abf879717c12cc68ed73290af2e2664796b9220";
    private static final String CHALLENGE_16_2 = "39c0e7521417ba54d43e8dc95174f423dee9bf3cd804ff6d65c857c9abf4d408";
    private static final String CLIENT_16_2 =
            "7b2274797065223a22776562617574686e2e676574222c226368616c6c656e6765223a224f63446e55685158756c5455506f334a5558543049393770767a7a59425039745a63685879617630314167222c226f726967696e223a2268747470733a2f2f6578616d706c652e6f7267222c2263726f73734f726967696e223a66616c73657d";
    private static final String TOLD_16_2 =
            "bfabc37432958b063360d3ad6461c9c4735ae7f8edd46592a5e0f01452b2e4b51900000000";
    private static final String SIGNATURE_16_2 =
            "3046022100f50a4e2e4409249c4a853ba361282f09841df4dd4547a13a87780218deffcd380221008480ac0f0b93538174f575bf11a1dd5d78c6e486013f937295ea13653e331e87";

    private static final String MADE_16_3 =
            "7b2274797065223a22776562617574686e2e637265617465222c226368616c6c656e6765223a2265476e4374334c55745936366b336a506a796e6962506b31716e666644616966715a774c33417032392d55222c226f726967696e223a2268747470733a2f2f6578616d706c652e6f7267222c2263726f73734f726967696e223a66616c73652c22657874726144617461223a22636c69656e74446174614a534f4e206d617920626520657874656e6465642077697468206164646974696f6e616c206669656c647320696e20746865206675747572652c207375636820617320746869733a205539685458764b453255526b4d6e625f307859485667227d";
    private static final String OBJECT_16_3 =
            "a363666d74667061636b65646761747453746d74a263616c672663736967584630440220067a20754ab925005dbf378097c92120031581c73228d1fb4f5b881bcd7da98302207fc7b147558c7c0eba3af18bd9d121fa3d3a26d17fe3f220272178f473b6006d68617574684461746158a4bfabc37432958b063360d3ad6461c9c4735ae7f8edd46592a5e0f01452b2e4b55d00000000df850e09db6afbdfab51697791506cfc0020455ef34e2043a87db3d4afeb39bbcb6cc32df9347c789a865ecdca129cbef58ca5010203262001215820eb151c8176b225cc651559fecf07af450fd85802046656b34c18f6cf193843c5225820927b8aa427a2be1b8834d233a2d34f61f13bfd44119c325d5896e183fee484f2";
    private static final String CREDENTIAL_16_3 = "455ef34e2043a87db3d4afeb39bbcb6cc32df9347c789a865ecdca129cbef58c";
    private static final String KEY_16_3 =
            "a5010203262001215820eb151c8176b225cc651559fecf07af450fd85802046656b34c18f6cf193843c5225820927b8aa427a2be1b8834d233a2d34f61f13bfd44119c325d5896e183fee484f2";

    private static final String MADE_16_4 =
            "7b2274797065223a22776562617574686e2e637265617465222c226368616c6c656e6765223a224f2d57717a514e5463554a484930437257576e7951504859647862694332674872434d475666704c4f306b222c226f726967696e223a2268747470733a2f2f6578616d706c652e6f7267222c2263726f73734f726967696e223a747275652c22657874726144617461223a22636c69656e74446174614a534f4e206d617920626520657874656e6465642077697468206164646974696f6e616c206669656c647320696e20746865206675747572652c207375636820617320746869733a207a5a7175457444523944577170573574425754467567227d";
    private static final String OBJECT_16_4 =
            "a363666d74646e6f6e656761747453746d74a068617574684461746158a4bfabc37432958b063360d3ad6461c9c4735ae7f8edd46592a5e0f01452b2e4b54500000000883f4f6014f19c09d87aa38123be48d000206e1050c0d2ca2f07c755cb2c66a74c64fa43065c18f938354d9915db2bd5ce57a501020326200121582022200a473f90b11078851550d03b4e44a2279f8c4eca27b3153dedfe03e4e97d225820cbd0be95e746ad6f5a8191be11756e4c0420e72f65b466d39bc56b8b123a9c6e";
    private static final String CREDENTIAL_16_4 = "6e1050c0d2ca2f07c755cb2c66a74c64fa43065c18f938354d9915db2bd5ce57";

    @Test
    void aNewPasskeyIsReadWithItsKeyAndItsFlags() {
        assertThat(made("7869c2b772d4b58eba9378cf8f29e26cf935aa77df0da89fa99c0bdc0a76f7e5", PARTY))
                .contains(new PasskeyCheck.Made(text(CREDENTIAL_16_3), new PasskeyKey(text(KEY_16_3), 0, true, true)));
    }

    private static Optional<PasskeyCheck.Made> made(String challenge, RelyingParty party) {
        return PasskeyCheck.made(
                party, text(challenge), json(CREDENTIAL_16_3, MADE_16_3, "attestationObject", OBJECT_16_3));
    }

    @Test
    void anotherChallengeOrSiteDoesNotFit() {
        assertThat(made("7869c2b772d4b58eba9378cf8f29e26cf935aa77df0da89fa99c0bdc0a76f7e6", PARTY))
                .isEmpty();
        assertThat(made(
                        "7869c2b772d4b58eba9378cf8f29e26cf935aa77df0da89fa99c0bdc0a76f7e5",
                        new RelyingParty("example.org", "https://www.example.org")))
                .isEmpty();
        assertThat(made(
                        "7869c2b772d4b58eba9378cf8f29e26cf935aa77df0da89fa99c0bdc0a76f7e5",
                        new RelyingParty("example.com", "https://example.org")))
                .isEmpty();
    }

    @Test
    void onePastItsOwnerOrFromWithinAnotherSiteIsRefused() {
        assertThat(PasskeyCheck.made(
                        PARTY,
                        text("00c30fb78531c464d2b6771dab8d7b603c01162f2fa486bea70f283ae556e130"),
                        json(CREDENTIAL_16_2, MADE_16_2, "attestationObject", OBJECT_16_2)))
                .isEmpty();
        assertThat(PasskeyCheck.made(
                        PARTY,
                        text("3be5aacd03537142472340ab5969f240f1d87716e20b6807ac230655fa4b3b49"),
                        json(CREDENTIAL_16_4, MADE_16_4, "attestationObject", OBJECT_16_4)))
                .isEmpty();
    }

    @Test
    void aSignatureHoldsAndOneThatWasTouchedDoesNot() {
        assertThat(verdict(SIGNATURE_16_2, 0, false)).isEqualTo(new Verdict.Right(0, true));
        assertThat(verdict(SIGNATURE_16_2.replace("1e87", "1e88"), 0, false)).isEqualTo(new Verdict.Wrong());
        assertThat(verdict(SIGNATURE_16_2, 0, true)).isEqualTo(new Verdict.Wrong());
        assertThat(verdict(SIGNATURE_16_2, 1, false)).isEqualTo(new Verdict.CountBack());
        assertThat(verdict(SIGNATURE_16_2.replace("1e87", "1e88"), 1, false)).isEqualTo(new Verdict.Wrong());
    }

    private static Verdict verdict(String signature, long countBefore, boolean ownerMustShow) {
        String json = json(CREDENTIAL_16_2, CLIENT_16_2, "authenticatorData", TOLD_16_2);
        ObjectNode answer = (ObjectNode) JsonMapper.shared().readTree(json);
        ((ObjectNode) answer.path("response"))
                .put("signature", text(signature))
                .put("userHandle", text(HexFormat.of().formatHex(OWNER.getBytes(StandardCharsets.UTF_8))));
        var passkey = new Passkey("1", text(CREDENTIAL_16_2), OWNER, "Phone", Instant.EPOCH, Optional.empty());
        var kept = new KeptPasskey(passkey, new PasskeyKey(text(KEY_16_2), countBefore, true, true));
        return PasskeyCheck.verdict(
                PARTY,
                text(CHALLENGE_16_2),
                kept,
                PasskeyCheck.read(answer.toString()).orElseThrow(),
                ownerMustShow);
    }

    private static String json(String credential, String client, String name, String value) {
        ObjectNode answer = JsonMapper.shared()
                .createObjectNode()
                .put("id", text(credential))
                .put("rawId", text(credential))
                .put("type", "public-key");
        answer.putObject("clientExtensionResults");
        answer.putObject("response").put("clientDataJSON", text(client)).put(name, text(value));
        return answer.toString();
    }

    /** Hexadecimal as base64url. */
    private static String text(String hex) {
        return Base64.getUrlEncoder()
                .withoutPadding()
                .encodeToString(HexFormat.of().parseHex(hex));
    }
}
