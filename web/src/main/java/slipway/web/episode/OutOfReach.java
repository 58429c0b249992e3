package slipway.web.episode;

/** A record of the own clinic that the reach of an account does not cover. */
public final class OutOfReach extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String episodeId;

    OutOfReach(String episodeId) {
        super("episode %s is out of reach".formatted(episodeId));
        this.episodeId = episodeId;
    }

    /** Id of the episode. */
    public String episodeId() {
        return episodeId;
    }
}
