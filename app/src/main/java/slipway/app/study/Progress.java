package slipway.app.study;

import java.io.PrintWriter;
import java.util.Locale;
import slipway.study.run.StudyState;

/** Tells how far a run is: one line that is rewritten on a terminal, a line now and then elsewhere. */
final class Progress {
    private static final int BAR = 30;
    private static final long TERMINAL_NANOS = 200_000_000L;
    private static final long ELSEWHERE_NANOS = 10_000_000_000L;
    private static final double NANOS = 1e9;

    private final PrintWriter err;
    private final boolean terminal;
    private final long began = System.nanoTime();
    private final long doneBefore;
    private long last = began;

    Progress(PrintWriter err, boolean terminal, long doneBefore) {
        this.err = err;
        this.terminal = terminal;
        this.doneBefore = doneBefore;
    }

    void tell(StudyState state) {
        long now = System.nanoTime();
        if (now - last < (terminal ? TERMINAL_NANOS : ELSEWHERE_NANOS)) {
            return;
        }
        last = now;
        long done = state.doneBatches();
        double share = (double) done / state.allBatches();
        double seconds = (now - began) / NANOS;
        double left = seconds * (state.allBatches() - done) / Math.max(1, done - doneBefore);
        int full = (int) (BAR * share);
        String line = String.format(
                Locale.ROOT,
                "[%s%s] %3.0f %%, about %.0f s left",
                "#".repeat(full),
                ".".repeat(BAR - full),
                100 * share,
                left);
        err.print(terminal ? "\r" + line + "   " : line + System.lineSeparator());
        err.flush();
    }

    void end() {
        if (terminal) {
            err.println();
            err.flush();
        }
    }
}
