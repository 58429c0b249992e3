package slipway.mechanics.calibration;

import java.util.List;

/** A table of measurements that cannot be used, with everything that is wrong with it. */
public final class EvidenceException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** What is wrong, one entry per mistake. */
    private final transient List<String> mistakes;

    EvidenceException(String table, List<String> mistakes) {
        super(table + ": " + String.join("; ", mistakes));
        this.mistakes = List.copyOf(mistakes);
    }

    /** What is wrong, one entry per mistake, each with its line. */
    public List<String> mistakes() {
        return mistakes;
    }
}
