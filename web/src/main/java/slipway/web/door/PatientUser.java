package slipway.web.door;

/**
 * Who has opened a code. What the code still opens is asked of the records each time.
 *
 * @param linkId of the access link; what is written carries it
 * @param clinicId of the episode of the link
 */
public record PatientUser(String linkId, String clinicId) {
    public PatientUser {
        if (!isId(linkId) || !isId(clinicId)) {
            throw new IllegalArgumentException("ids are 1 to 64 letters, digits, hyphens or underscores");
        }
    }

    /** Whether a text can be an id; nothing else gets into a cookie. */
    static boolean isId(String text) {
        return text.matches("[A-Za-z0-9_-]{1,64}");
    }
}
