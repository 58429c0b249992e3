package slipway.web.bench;

import java.util.List;
import slipway.web.bench.BenchAnswer.Drawn;

/**
 * An exercise as a motion.
 *
 * @param name of the exercise
 * @param figure the first picture, with what changes in it for each ground; tracks are blank if it cannot be moved
 * @param stills start, middle and end, for whoever wants no motion
 * @param chart load over time
 * @param moments time, load and glide for the script
 * @param seconds of one repetition
 * @param site where the load is read
 * @param validated whether published measurements stand behind the nerve there
 * @param peak highest load and its interval
 * @param glide range of the glide
 */
public record BenchMotion(
        String id,
        String name,
        Moving figure,
        List<Still> stills,
        Drawn chart,
        String moments,
        String seconds,
        String site,
        boolean validated,
        BenchAnswer.Cell peak,
        String glide) {
    public BenchMotion {
        stills = List.copyOf(stills);
    }

    /** A figure and what changes in it. */
    public record Moving(Drawn start, Drawn tracks) {}

    /** One picture with its words. */
    public record Still(String caption, Drawn figure) {}
}
