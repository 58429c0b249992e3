package slipway.study.data;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import slipway.mechanics.evidence.BundledTable;

/** The data files of the study, below {@code /slipway/study/}. */
public final class StudyData {
    private static final List<String> FILES =
            List.of("people.csv", "worlds.csv", "changes.csv", "care.csv", "sites.csv", "bodies.csv", "load.csv");

    private StudyData() {}

    /** The rows of a table. */
    public static List<CSVRecord> table(String file) {
        return BundledTable.parseText(text(file));
    }

    /** SHA-256 over all tables: two runs are comparable only if it is the same. */
    public static String sha256() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (String file : FILES) {
                digest.update(text(file).getBytes(StandardCharsets.UTF_8));
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static String text(String file) {
        try (var stream = StudyData.class.getResourceAsStream("/slipway/study/" + file)) {
            if (stream == null) {
                throw new IllegalStateException("the program was packaged without its data file " + file);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the bundled file " + file + " cannot be read", e);
        }
    }
}
