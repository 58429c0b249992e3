package slipway.web.clinic;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.multipart.MultipartFile;
import slipway.care.codes.CodesFile;
import slipway.documents.words.Words;
import slipway.exercises.yaml.MistakesException;
import slipway.reasoning.codes.CodeEntry;
import slipway.reasoning.codes.CodeExclusion;
import slipway.reasoning.codes.CodeSet;
import slipway.web.form.FormReader;

/**
 * The files of a load: uploaded now, or as the page that showed them carries them.
 *
 * @param version of the list that they were laid beside
 */
record CodesForm(
        @Nullable MultipartFile codes,
        @Nullable MultipartFile exclusions,
        @Nullable String keptCodes,
        @Nullable String keptExclusions,
        long version) {

    /** What was read, or every mistake of both files. */
    record Reading(CodeSet set, List<String> mistakes) {}

    /**
     * What was read.
     *
     * @param now the list of the clinic up to now; its exclusions stay if no file of them is given
     */
    Reading read(CodeSet now, Words words) {
        var mistakes = new ArrayList<String>();
        List<CodeEntry> entries = List.of();
        List<CodeExclusion> others = now.exclusions();
        byte[] given = bytes(codes, keptCodes);
        if (given.length == 0) {
            mistakes.add(words.get("codes.wrong.file"));
        }
        try {
            entries = given.length == 0 ? entries : CodesFile.codes(words.get("codes.file"), given);
        } catch (MistakesException e) {
            mistakes.addAll(lines(e));
        }
        byte[] beside = bytes(exclusions, keptExclusions);
        try {
            others = beside.length == 0 ? others : CodesFile.exclusions(words.get("codes.exclusions"), beside);
        } catch (MistakesException e) {
            mistakes.addAll(lines(e));
        }
        return new Reading(mistakes.isEmpty() ? new CodeSet(entries, others) : CodeSet.EMPTY, mistakes);
    }

    private static List<String> lines(MistakesException e) {
        return String.valueOf(e.getMessage()).lines().toList();
    }

    private static byte[] bytes(@Nullable MultipartFile file, @Nullable String kept) {
        try {
            return file != null && !file.isEmpty()
                    ? file.getBytes()
                    : FormReader.text(kept).getBytes(StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
