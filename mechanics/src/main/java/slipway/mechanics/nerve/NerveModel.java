package slipway.mechanics.nerve;

import java.util.List;
import slipway.mechanics.body.Posture;

/**
 * How one person's nerve answers to postures, in every draw of the model. Draw {@code i} is the same parameter vector
 * in every answer, so what two postures have in common cancels when they are compared draw by draw.
 */
public interface NerveModel {
    /** Number of draws; the length of every array in an answer. */
    int draws();

    /** The answer to one posture. */
    PostureResponse respond(Posture posture);

    /** The answers to the postures of one motion, in order; cheaper than one by one where neighbours are close. */
    default List<PostureResponse> respondAlong(List<Posture> motion) {
        return motion.stream().map(this::respond).toList();
    }

    /**
     * The same model for somebody who asks for many postures that lie near one another, and asks alone: it starts from what it
     * was asked last, which is cheaper. Answers differ from those of the model by what a solution is accurate to, far less
     * than any result shows, and so depend on the order of the questions by that much.
     */
    default NerveModel walk() {
        return this;
    }
}
