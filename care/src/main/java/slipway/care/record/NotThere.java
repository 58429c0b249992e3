package slipway.care.record;

/** A record that does not exist, or not for whoever asks: the two are not told apart. */
public final class NotThere extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /**
     * A record that is not there.
     *
     * @param what kind of record, for example {@code visit}
     * @param id its id; ids say nothing of the person
     */
    public NotThere(String what, String id) {
        super("there is no %s %s".formatted(what, id));
    }
}
