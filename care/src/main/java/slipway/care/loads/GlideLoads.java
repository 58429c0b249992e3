package slipway.care.loads;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Purpose;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.parameters.FittedParameters;
import slipway.reasoning.dose.StandardLoads;

/**
 * The glides of the catalogue at one place of a standard body, with the angles of their pictures.
 *
 * @param site where glide and load are read
 * @param rows in the order of the catalogue
 */
public record GlideLoads(Site site, List<Row> rows) {
    public GlideLoads {
        rows = List.copyOf(rows);
    }

    /**
     * One glide.
     *
     * @param notModelled joints that move in it and that the nerve model leaves out, by name
     */
    public record Row(Exercise exercise, StandardLoads.Loads loads, List<String> notModelled) {
        public Row {
            notModelled = List.copyOf(notModelled);
        }
    }

    /** The glides whose file names the tract of the place, with all draws; about a second. */
    public static GlideLoads at(Site site) {
        return of(
                site,
                FittedParameters.DRAWS,
                exercise -> exercise.use().modelledTracts().stream().anyMatch(site::liesOn));
    }

    /** With fewer draws, to put the glides in an order quickly; medians are then a little less sure. */
    static GlideLoads ofAllGlides(Site site, int draws) {
        return of(site, draws, exercise -> true);
    }

    private static GlideLoads of(Site site, int draws, Predicate<Exercise> wanted) {
        var loads = StandardLoads.at(StandardBody.nerve(site.tract().pathway(), draws), site);
        var rows = new ArrayList<Row>();
        for (Exercise exercise : Catalogue.bundled().list()) {
            if (exercise.purpose() == Purpose.GLIDE && wanted.test(exercise)) {
                rows.add(new Row(
                        exercise,
                        loads.along(StandardBody.way(exercise)),
                        StandardBody.notModelled(exercise, site.tract().pathway())));
            }
        }
        return new GlideLoads(site, rows);
    }
}
