package slipway.web.security;

import com.webauthn4j.WebAuthnManager;
import com.webauthn4j.converter.util.ObjectConverter;
import com.webauthn4j.credential.CredentialRecordImpl;
import com.webauthn4j.data.AuthenticationData;
import com.webauthn4j.data.AuthenticationParameters;
import com.webauthn4j.data.PublicKeyCredentialParameters;
import com.webauthn4j.data.PublicKeyCredentialType;
import com.webauthn4j.data.RegistrationData;
import com.webauthn4j.data.RegistrationParameters;
import com.webauthn4j.data.attestation.authenticator.AAGUID;
import com.webauthn4j.data.attestation.authenticator.AttestedCredentialData;
import com.webauthn4j.data.attestation.authenticator.AuthenticatorData;
import com.webauthn4j.data.attestation.authenticator.COSEKey;
import com.webauthn4j.data.attestation.statement.COSEAlgorithmIdentifier;
import com.webauthn4j.data.attestation.statement.NoneAttestationStatement;
import com.webauthn4j.data.client.Origin;
import com.webauthn4j.data.client.challenge.DefaultChallenge;
import com.webauthn4j.server.ServerProperty;
import com.webauthn4j.verifier.exception.MaliciousCounterValueException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import slipway.care.record.access.KeptPasskey;
import slipway.care.record.access.Passkey;
import slipway.care.record.access.PasskeyKey;

/**
 * Whether an answer of a passkey is right, by the steps of W3C Web Authentication, level 3, sections 7.1 and 7.2. The
 * person must have shown that it is them, by finger, face or PIN: that makes a passkey two factors in one.
 *
 * <p>The library has exceptions of its own for what does not hold, but trips over some of what is no answer at all
 * (null, say). Anybody on the network may send that, so whatever it throws is a refusal.
 */
final class PasskeyCheck {
    /** Longer than any answer that holds what we ask for. */
    private static final int LONGEST = 20_000;

    private static final ObjectConverter FORMS = new ObjectConverter();
    // Who made the device is not asked: any that its owner trusts is good enough for a clinic.
    private static final WebAuthnManager STEPS = WebAuthnManager.createNonStrictWebAuthnManager(FORMS);
    private static final List<PublicKeyCredentialParameters> KINDS = Arrays.stream(Algorithm.values())
            .map(algorithm -> new PublicKeyCredentialParameters(
                    PublicKeyCredentialType.PUBLIC_KEY, COSEAlgorithmIdentifier.create(algorithm.cose())))
            .toList();

    private PasskeyCheck() {}

    /** Signatures that are taken, most wanted first (numbers: IANA, COSE Algorithms). */
    enum Algorithm {
        ES256(-7),
        EDDSA(-8),
        RS256(-257);

        private final int cose;

        Algorithm(int cose) {
            this.cose = cose;
        }

        int cose() {
            return cose;
        }
    }

    /** A new passkey as its device told it. */
    record Made(String credentialId, PasskeyKey key) {}

    /** An answer that could be read; nothing of it is proven. */
    record Answer(String credentialId, AuthenticationData data) {}

    /** What came of looking at an answer. */
    sealed interface Verdict {
        /** Signed by this passkey, for us, now, by its owner. */
        record Right(long signatureCount, boolean backedUp) implements Verdict {}

        /** Anything that does not hold; which, is not said. */
        record Wrong() implements Verdict {}

        /** All holds but the count of signatures: it did not rise, so that there may be a copy of the device. */
        record CountBack() implements Verdict {}
    }

    /** The passkey that a device made for a challenge; empty if anything about it does not hold. */
    static Optional<Made> made(RelyingParty party, String challenge, String json) {
        if (json.length() > LONGEST) {
            return Optional.empty();
        }
        try {
            RegistrationData data = STEPS.parseRegistrationResponseJSON(json);
            STEPS.verify(data, new RegistrationParameters(server(party, challenge), KINDS, true, true));
            var told = Objects.requireNonNull(data.getAttestationObject()).getAuthenticatorData();
            AttestedCredentialData credential = Objects.requireNonNull(told.getAttestedCredentialData());
            byte[] key = FORMS.getCborMapper().writeValueAsBytes(credential.getCOSEKey());
            return Optional.of(new Made(
                    text(credential.getCredentialId()),
                    new PasskeyKey(text(key), told.getSignCount(), told.isFlagBE(), told.isFlagBS())));
        } catch (RuntimeException e) {
            return Optional.empty();
        }
    }

    /** Reads an answer; empty if it is none. */
    static Optional<Answer> read(String json) {
        if (json.length() > LONGEST) {
            return Optional.empty();
        }
        try {
            AuthenticationData data = STEPS.parseAuthenticationResponseJSON(json);
            String id = text(data.getCredentialId());
            return id.isEmpty() || id.length() > Passkey.LONGEST_ID
                    ? Optional.empty()
                    : Optional.of(new Answer(id, data));
        } catch (RuntimeException e) {
            return Optional.empty();
        }
    }

    /** Whether an answer is that of this passkey to this challenge. */
    static Verdict verdict(RelyingParty party, String challenge, KeptPasskey kept, Answer answer) {
        return verdict(party, challenge, kept, answer, true);
    }

    /** The same, for test vectors in which nobody has shown who they are. */
    static Verdict verdict(
            RelyingParty party, String challenge, KeptPasskey kept, Answer answer, boolean ownerMustShow) {
        AuthenticationData data = answer.data();
        if (!isOwner(kept, data)) {
            return new Verdict.Wrong();
        }
        try {
            STEPS.verify(
                    data,
                    new AuthenticationParameters(server(party, challenge), known(kept), null, ownerMustShow, true));
            AuthenticatorData<?> told = Objects.requireNonNull(data.getAuthenticatorData());
            return new Verdict.Right(told.getSignCount(), told.isFlagBS());
        } catch (MaliciousCounterValueException e) {
            return new Verdict.CountBack();
        } catch (RuntimeException e) {
            return new Verdict.Wrong();
        }
    }

    /** Nobody typed a name, so the device must tell whose passkey it is, and we must know it as that person's. */
    private static boolean isOwner(KeptPasskey kept, AuthenticationData data) {
        byte[] owner = kept.passkey().staffId().getBytes(StandardCharsets.UTF_8);
        return data.getUserHandle() != null && MessageDigest.isEqual(owner, data.getUserHandle());
    }

    private static ServerProperty server(RelyingParty party, String challenge) {
        return ServerProperty.builder()
                .origins(Set.of(Origin.create(party.origin())))
                .rpId(party.id())
                .challenge(new DefaultChallenge(bytes(challenge)))
                .build();
    }

    private static CredentialRecordImpl known(KeptPasskey kept) {
        PasskeyKey key = kept.key();
        COSEKey cose = FORMS.getCborMapper().readValue(bytes(key.publicKey()), COSEKey.class);
        return new CredentialRecordImpl(
                new NoneAttestationStatement(),
                true,
                key.backupEligible(),
                key.backedUp(),
                key.signatureCount(),
                new AttestedCredentialData(
                        AAGUID.ZERO, bytes(kept.passkey().credentialId()), Objects.requireNonNull(cose)),
                null,
                null,
                null,
                null);
    }

    private static byte[] bytes(String text) {
        return Base64.getUrlDecoder().decode(text);
    }

    private static String text(byte[] bytes) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }
}
