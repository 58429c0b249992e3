package slipway.care.record.follow;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipway.care.record.Saving;
import tools.jackson.databind.node.ObjectNode;

/** The goals of an episode. */
public interface Goals {
    Goal add(String words, Optional<String> measureId, ObjectNode target, Optional<LocalDate> due);

    /** Changes a goal; {@code goal} carries the version that was read. */
    Saving<Goal> change(Goal goal);

    /** In the order of writing. */
    List<Goal> list();
}
