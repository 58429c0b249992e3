package slipway.web.people;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.web.multipart.MultipartFile;
import slipway.web.form.FormReader;

/**
 * The fields of a referral from a file.
 *
 * @param file uploaded now; absent when what was shown is confirmed
 * @param kept the file that was shown, in base 64
 * @param into the episode that it goes into; blank for a new person
 * @param side of a new person: left or right
 * @param language of a new person
 * @param state the word that came with what was shown
 * @param same {@code yes} if somebody looked whether it is the same person
 */
record ReferralForm(
        @Nullable MultipartFile file,
        String kept,
        String into,
        String side,
        String language,
        String state,
        String same) {
    /**
     * In base 64 it is a third longer and must fit, with the other fields, into the 512 kB that the server takes of the fields
     * of a form: otherwise a file could be shown and not be confirmed.
     */
    static final int MOST_BYTES = 380_000;

    private static final int MOST_LETTERS = (MOST_BYTES + 2) / 3 * 4;

    ReferralForm(
            @Nullable MultipartFile file,
            @Nullable String kept,
            @Nullable String into,
            @Nullable String side,
            @Nullable String language,
            @Nullable String state,
            @Nullable String same) {
        this.file = file;
        this.kept = FormReader.text(kept);
        this.into = FormReader.text(into).strip();
        this.side = FormReader.text(side);
        this.language = FormReader.text(language);
        this.state = FormReader.text(state);
        this.same = FormReader.text(same);
    }

    /** Key of the words that say what is missing. */
    Optional<String> mistake() {
        boolean uploaded = file != null && !file.isEmpty();
        if (!uploaded && kept.isEmpty()) {
            return Optional.of("referral.wrong.file");
        }
        if ((file != null && file.getSize() > MOST_BYTES) || kept.length() > MOST_LETTERS) {
            return Optional.of("referral.wrong.size");
        }
        if (!uploaded && !kept.matches("[A-Za-z0-9+/]+={0,2}")) {
            return Optional.of("referral.wrong.file");
        }
        return into.isEmpty() && !side.equals("left") && !side.equals("right")
                ? Optional.of("referral.wrong.side")
                : Optional.empty();
    }

    /** The file; to be asked for only without a mistake. */
    byte[] bytes() {
        try {
            return file != null && !file.isEmpty()
                    ? file.getBytes()
                    : Base64.getDecoder().decode(kept);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (IllegalArgumentException e) {
            return new byte[0];
        }
    }

    /** The file as the page that shows it carries it. */
    String encoded() {
        return Base64.getEncoder().encodeToString(bytes());
    }
}
