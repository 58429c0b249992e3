package slipway.care.record.trail;

/**
 * What was there before and after an act, as JSON text each; empty text for nothing.
 */
public record TrailPayload(String before, String after) {
    /** The text that the payload digest is taken over. */
    public String form() {
        return before.isEmpty() && after.isEmpty() ? "" : before.length() + ":" + before + "\n" + after;
    }
}
