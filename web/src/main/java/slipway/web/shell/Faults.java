package slipway.web.shell;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A fault told without its message, because messages can hold names and findings. */
public final class Faults {
    private static final int DEPTH = 6;

    private Faults() {}

    /** Types of the fault and its causes with the places in this program where they arose. */
    public static String describe(@Nullable Throwable fault) {
        var text = new StringBuilder();
        for (Throwable at = fault; at != null; at = at.getCause()) {
            text.append(text.isEmpty() ? "" : " <- ").append(at.getClass().getName());
            String places = Arrays.stream(at.getStackTrace())
                    .filter(frame -> frame.getClassName().startsWith("slipway."))
                    .limit(DEPTH)
                    .map(frame -> frame.getFileName() + ":" + frame.getLineNumber())
                    .collect(Collectors.joining(" "));
            text.append(places.isEmpty() ? "" : " at " + places);
        }
        return text.isEmpty() ? "unknown" : text.toString();
    }
}
