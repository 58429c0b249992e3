package slipway.mechanics.evidence;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * The fingerprint of the frozen evidence, carried by parameter files and plans, so that a result says which published
 * numbers made it.
 */
public final class EvidenceHash {
    private static final List<String> TABLES = List.of(
            "geometry.csv",
            "joints.csv",
            "muscle-beds.csv",
            "nerve-motion.csv",
            "positions.csv",
            "priors.csv",
            "sites.csv");

    private EvidenceHash() {}

    /** The tables of the frozen evidence, in the order in which they are hashed. */
    public static List<String> tables() {
        return TABLES;
    }

    /**
     * SHA-256 over all tables as 64 lower-case hexadecimal digits. Of each table the name, a zero byte, the content and
     * another zero byte go in; carriage returns are left out, so that a checkout with other line ends gives the same.
     *
     * @throws IllegalStateException if the program was packaged without one of the tables
     */
    public static String sha256() {
        MessageDigest digest = newDigest();
        for (String table : TABLES) {
            digest.update(table.getBytes(StandardCharsets.UTF_8));
            digest.update((byte) 0);
            for (byte b : bytesOf(table)) {
                if (b != '\r') {
                    digest.update(b);
                }
            }
            digest.update((byte) 0);
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static byte[] bytesOf(String table) {
        try (var stream = EvidenceHash.class.getResourceAsStream("/slipway/evidence/" + table)) {
            if (stream == null) {
                throw new IllegalStateException("the program was packaged without its table " + table);
            }
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled table " + table + " cannot be read", e);
        }
    }

    private static MessageDigest newDigest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
