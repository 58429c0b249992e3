package slipway.care.record.codes;

import java.nio.charset.StandardCharsets;
import slipway.care.codes.CodesFile;
import slipway.care.record.trail.TrailForm;
import slipway.reasoning.codes.CodeSet;

/**
 * A list of codes as it is kept: the texts of its two files.
 *
 * @param codes as {@link CodesFile#codes} reads it
 * @param exclusions as {@link CodesFile#exclusions} reads it
 */
public record CodeFiles(String codes, String exclusions) {
    /** The files of a list. */
    public static CodeFiles of(CodeSet set) {
        return new CodeFiles(
                text(CodesFile.codesFile(set.entries())), text(CodesFile.exclusionsFile(set.exclusions())));
    }

    private static String text(byte[] utf8) {
        return new String(utf8, StandardCharsets.UTF_8);
    }

    /** The list. */
    public CodeSet set() {
        return new CodeSet(
                CodesFile.codes("codes", codes.getBytes(StandardCharsets.UTF_8)),
                CodesFile.exclusions("exclusions", exclusions.getBytes(StandardCharsets.UTF_8)));
    }

    /** Number of codes: a line each below the names of the columns. */
    public int codeCount() {
        return (int) codes.lines().count() - 1;
    }

    /** Number of exclusions. */
    public int exclusionCount() {
        return (int) exclusions.lines().count() - 1;
    }

    /** SHA-256 of both. */
    public String sha256() {
        return TrailForm.sha256(codes + exclusions);
    }
}
