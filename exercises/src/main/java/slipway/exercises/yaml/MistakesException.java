package slipway.exercises.yaml;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** A file that cannot be taken as it is, with all its mistakes in the order of the file. */
public final class MistakesException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Mistake> mistakes;

    /**
     * A file with mistakes.
     *
     * @param source name of the file as the reader of the message knows it
     * @param mistakes at least one
     */
    public MistakesException(String source, Collection<Mistake> mistakes) {
        super(mistakes.stream()
                .distinct()
                .sorted()
                .map(mistake -> source + ": " + mistake)
                .collect(Collectors.joining("\n")));
        this.mistakes = mistakes.stream().distinct().sorted().toList();
    }

    /** What is wrong, in the order of the file. */
    public List<Mistake> mistakes() {
        return mistakes;
    }
}
