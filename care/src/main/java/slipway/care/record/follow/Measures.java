package slipway.care.record.follow;

import java.time.LocalDate;
import java.util.List;
import tools.jackson.databind.node.ObjectNode;

/** The measures of an episode. */
public interface Measures {
    MeasureEntry add(String measureId, LocalDate day, ObjectNode body);

    /** Adds an entry that corrects an earlier one. */
    MeasureEntry correct(String entryId, LocalDate day, ObjectNode body);

    /** By day, then in the order of writing; corrected ones are left out. */
    List<MeasureEntry> list();
}
