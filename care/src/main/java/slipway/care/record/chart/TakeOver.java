package slipway.care.record.chart;

import java.time.LocalDate;
import java.util.List;
import slipway.care.record.person.PersonDetails;
import tools.jackson.databind.node.ObjectNode;

/**
 * What comes from another system into an episode, with the versions of what it was laid beside.
 *
 * @param personVersion that was read
 * @param person as it shall be
 * @param paperworkVersion that was read; 0 for one that nobody has written
 * @param paperwork the section as it shall be
 * @param measureIds of the measures that were read
 * @param scores new ones
 */
public record TakeOver(
        long personVersion,
        PersonDetails person,
        long paperworkVersion,
        ObjectNode paperwork,
        List<String> measureIds,
        List<Score> scores) {
    public TakeOver {
        paperwork = paperwork.deepCopy();
        measureIds = List.copyOf(measureIds);
        scores = List.copyOf(scores);
    }

    /** A copy. */
    @Override
    public ObjectNode paperwork() {
        return paperwork.deepCopy();
    }

    /** A score to be kept, see {@link slipway.care.record.follow.MeasureEntry}. */
    public record Score(String measureId, LocalDate day, ObjectNode body) {
        public Score {
            body = body.deepCopy();
        }

        /** A copy. */
        @Override
        public ObjectNode body() {
            return body.deepCopy();
        }
    }
}
