package slipway.web.remind;

/** Which reminder a person needs on a day. */
enum Need {
    /** None: reported, nothing at home, everything rests, or asked a short time ago. */
    NONE("none"),
    /** The one of a usual day. */
    TODAY("today"),
    /** A kind question to somebody who was not heard of for a while. */
    ASK("ask");

    private final String key;

    Need(String key) {
        this.key = key;
    }

    /** Where its words begin in the files of messages. */
    String key() {
        return key;
    }
}
