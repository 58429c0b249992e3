package slipway.care.record.intake;

import java.util.List;
import java.util.Optional;
import slipway.exercises.exercise.Language;
import tools.jackson.databind.node.ObjectNode;

/** What was told before the first visit of an episode; never changed. */
public interface Intakes {
    /**
     * What somebody has to look at.
     *
     * @param kind begins with {@link Intake#ALERT}
     * @param words what was told, without the name of the person
     * @param ownerId account of whoever has to look
     */
    record Danger(String kind, String words, String ownerId) {
        public Danger {
            if (!kind.startsWith(Intake.ALERT) || words.isBlank()) {
                throw new IllegalArgumentException("an alert of an intake has words and a kind that begins so");
            }
        }
    }

    /**
     * Keeps what was told and raises the alert, both or neither. On return it is on the disk. A link is done once: after
     * that nothing more comes in by it.
     *
     * @return what is kept; empty if this link was done before
     */
    Optional<Intake> tell(boolean whole, Language language, ObjectNode answers, Optional<Danger> danger);

    /** All, in the order in which they were told. */
    List<Intake> list();
}
