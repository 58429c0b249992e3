package slipway.web.security;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.security.Signature;
import java.security.interfaces.ECPublicKey;
import java.security.spec.ECGenParameterSpec;
import java.util.Base64;
import java.util.HexFormat;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * A device with one passkey and the browser in front of it, written from W3C Web Authentication, level 3 (sections 5.8.1,
 * 6.1, 6.5) without the library that the server checks with. It can be told to lie.
 */
final class SoftKey {
    private static final int USER_PRESENT = 0x01;
    private static final int USER_VERIFIED = 0x04;
    private static final int KEY_TOLD = 0x40;

    private final KeyPair keys;
    private final byte[] id = new byte[32];
    private final String page;

    private int count;
    private boolean verifies = true;
    private String handle = "";

    /** A device whose browser shows a page of this origin. */
    SoftKey(String page) {
        try {
            KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
            generator.initialize(new ECGenParameterSpec("secp256r1"));
            keys = generator.generateKeyPair();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
        new SecureRandom().nextBytes(id);
        this.page = page;
    }

    /** The count that the next answer is above. */
    SoftKey counting(int from) {
        count = from;
        return this;
    }

    /** Whether it asks for a finger, face or PIN. */
    SoftKey verifying(boolean asks) {
        verifies = asks;
        return this;
    }

    /** Says that it belongs to another account. */
    SoftKey ownedBy(String staffId) {
        handle = PasskeyOptions.handle(staffId);
        return this;
    }

    /** Makes the passkey for what the server asked for. */
    String make(String options) {
        JsonNode asked = JsonMapper.shared().readTree(options);
        handle = asked.path("user").path("id").asString();
        byte[] told = joined(
                told(asked.path("rp").path("id").asString(), KEY_TOLD),
                new byte[16],
                ByteBuffer.allocate(2).putShort((short) id.length).array(),
                id,
                coseKey());
        var object = new ByteArrayOutputStream();
        object.writeBytes(HexFormat.of().parseHex("a363666d74646e6f6e656761747453746d74a0686175746844617461"));
        object.writeBytes(new byte[] {0x58, (byte) told.length});
        object.writeBytes(told);
        return answer(client(asked, "webauthn.create", page), "attestationObject", object.toByteArray());
    }

    /** Signs in, as from a page of its browser. */
    String enter(String options) {
        return enter(options, page);
    }

    /** Signs in, as from a page of another origin. */
    String enter(String options, String shown) {
        JsonNode asked = JsonMapper.shared().readTree(options);
        byte[] client = client(asked, "webauthn.get", shown);
        byte[] told = told(asked.path("rpId").asString(), 0);
        ObjectNode answer = (ObjectNode) JsonMapper.shared().readTree(answer(client, "authenticatorData", told));
        ((ObjectNode) answer.path("response"))
                .put("signature", text(signed(joined(told, sha256(client)))))
                .put("userHandle", handle);
        return answer.toString();
    }

    private String answer(byte[] client, String name, byte[] value) {
        ObjectNode answer = JsonMapper.shared()
                .createObjectNode()
                .put("id", text(id))
                .put("rawId", text(id))
                .put("type", "public-key");
        answer.putObject("clientExtensionResults");
        answer.putObject("response").put("clientDataJSON", text(client)).put(name, text(value));
        return answer.toString();
    }

    private static byte[] client(JsonNode asked, String type, String origin) {
        return JsonMapper.shared()
                .createObjectNode()
                .put("type", type)
                .put("challenge", asked.path("challenge").asString())
                .put("origin", origin)
                .put("crossOrigin", false)
                .toString()
                .getBytes(StandardCharsets.UTF_8);
    }

    private byte[] told(String party, int more) {
        int flags = USER_PRESENT | (verifies ? USER_VERIFIED : 0) | more;
        if (count > 0) {
            count++;
        }
        return joined(
                sha256(party.getBytes(StandardCharsets.UTF_8)),
                new byte[] {(byte) flags},
                ByteBuffer.allocate(4).putInt(count).array());
    }

    /** Map of RFC 9053, section 7.1.1: kind EC2, ES256, P-256, x, y. */
    private byte[] coseKey() {
        var point = ((ECPublicKey) keys.getPublic()).getW();
        HexFormat hex = HexFormat.of();
        return hex.parseHex("a5010203262001215820%064x225820%064x".formatted(point.getAffineX(), point.getAffineY()));
    }

    private byte[] signed(byte[] what) {
        try {
            Signature signature = Signature.getInstance("SHA256withECDSA");
            signature.initSign(keys.getPrivate());
            signature.update(what);
            return signature.sign();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    private static byte[] sha256(byte[] what) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(what);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    private static byte[] joined(byte[]... parts) {
        var all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }

    private static String text(byte[] bytes) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }
}
