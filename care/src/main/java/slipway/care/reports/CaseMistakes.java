package slipway.care.reports;

import java.util.List;

/** A list of cases that cannot be read as it stands: all mistakes at once, each with line and column. */
public final class CaseMistakes extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<String> mistakes;

    /** All mistakes of a file. */
    public CaseMistakes(String source, List<String> mistakes) {
        super(source + ":\n  " + String.join("\n  ", mistakes));
        this.mistakes = List.copyOf(mistakes);
    }

    /** What is wrong, in the order of the file. */
    public List<String> mistakes() {
        return mistakes;
    }
}
