package slipway.reasoning.dose;

/** What a movement is for. */
public enum Purpose {
    /** Slides the nerve: one end is pulled while the other is let go or held. */
    SLIDE,
    /** Loads the nerve from both ends. */
    TENSION,
    /** Keeps a joint moving; its range is never driven by glide. */
    COMFORT
}
