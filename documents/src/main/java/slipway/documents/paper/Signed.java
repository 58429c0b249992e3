package slipway.documents.paper;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import slipway.care.record.papers.Paper;

/**
 * How a paper of the record stands: draft, signed, co-signed; what was added afterwards; whether the text still is what
 * was signed.
 *
 * @param signature empty for a draft
 * @param coSignatures of others who took the same text
 * @param addenda what was added in words, oldest first
 */
public record Signed(
        Optional<Paper.Signature> signature,
        List<Paper.Signature> coSignatures,
        List<Paper.Addendum> addenda,
        boolean unaltered) {
    /** Begins an addendum that is a co-signature; the digest of the co-signed text follows. */
    private static final String CO_SIGNED = "co-signed sha256:";

    public Signed {
        coSignatures = List.copyOf(coSignatures);
        addenda = List.copyOf(addenda);
    }

    /** How a paper stands. A co-signature of another text, or of the signer, counts for nothing. */
    public static Signed of(Paper paper) {
        if (paper.signature().isEmpty()) {
            return new Signed(Optional.empty(), List.of(), paper.addenda(), true);
        }
        Paper.Signature signature = paper.signature().get();
        var coSigned = new ArrayList<Paper.Signature>();
        var added = new ArrayList<Paper.Addendum>();
        for (Paper.Addendum addendum : paper.addenda()) {
            if (!addendum.text().startsWith(CO_SIGNED)) {
                added.add(addendum);
            } else if (addendum.text().equals(coSignature(signature.sha256()))
                    && !addendum.signature().by().equals(signature.by())) {
                coSigned.add(addendum.signature());
            }
        }
        return new Signed(
                Optional.of(signature), coSigned, added, signature.sha256().equals(sha256(paper.text())));
    }

    /**
     * What to add to a signed paper to co-sign it, see {@link slipway.care.record.papers.Papers#amend}.
     *
     * @param sha256 of the text as signed
     */
    public static String coSignature(String sha256) {
        return CO_SIGNED + sha256;
    }

    /** The same with names in place of the ids of whoever signed. */
    public Signed named(UnaryOperator<String> names) {
        return new Signed(
                signature.map(each -> named(each, names)),
                coSignatures.stream().map(each -> named(each, names)).toList(),
                addenda.stream()
                        .map(each -> new Paper.Addendum(each.number(), each.text(), named(each.signature(), names)))
                        .toList(),
                unaltered);
    }

    private static Paper.Signature named(Paper.Signature signature, UnaryOperator<String> names) {
        return new Paper.Signature(names.apply(signature.by()), signature.at(), signature.sha256());
    }

    /** Whether an addendum of these words would read as a co-signature; nobody may write one by hand. */
    public static boolean isCoSignature(String text) {
        return text.startsWith(CO_SIGNED);
    }

    /** When the last of those needed has signed; empty until then. */
    public Optional<Instant> completeAt(boolean coSignatureNeeded) {
        return coSignatureNeeded
                ? coSignatures.stream().map(Paper.Signature::at).findFirst()
                : signature.map(Paper.Signature::at);
    }

    /** SHA-256 of a text in UTF-8, in hexadecimal. */
    public static String sha256(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
