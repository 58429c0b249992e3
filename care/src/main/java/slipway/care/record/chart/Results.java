package slipway.care.record.chart;

import java.util.List;
import java.util.Optional;
import tools.jackson.databind.node.ObjectNode;

/** Computed results of an episode. */
public interface Results {
    /** Keeps a result. The same kind with the same inputs and stamp again gives the one that is kept already. */
    ComputedResult add(ResultKind kind, ResultInputs inputs, Stamp stamp, ObjectNode body);

    Optional<ComputedResult> newest(ResultKind kind);

    /** All of a kind, newest first. */
    List<ComputedResult> list(ResultKind kind);
}
