package slipway.care.loads;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Predicate;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.KeyPose;
import slipway.exercises.exercise.Purpose;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.pathway.PathwayModel;
import slipway.reasoning.basis.Coefficients;
import slipway.reasoning.dose.StandardLoads;

/**
 * The glides of the catalogue at one place of a standard body, with the angles of their pictures.
 *
 * @param site where glide and load are read
 * @param rows in the order of the catalogue
 */
public record GlideLoads(Site site, List<Row> rows) {
    private static final Coefficients DATA = Coefficients.load("visit.csv");
    private static final double CM_PER_M = 100;

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
        var person = new Person(DATA.value("standard-stature-cm") / CM_PER_M);
        var model = PathwayModel.of(
                site.tract().pathway(), person, FittedParameters.bundled().draws(draws, FittedParameters.SEED));
        var loads = StandardLoads.at(model, site);
        var rows = new ArrayList<Row>();
        for (Exercise exercise : Catalogue.bundled().list()) {
            if (exercise.purpose() == Purpose.GLIDE && wanted.test(exercise)) {
                rows.add(new Row(
                        exercise,
                        loads.along(way(exercise)),
                        notModelled(exercise, site.tract().pathway())));
            }
        }
        return new GlideLoads(site, rows);
    }

    /** From the first to the second pose in even steps. */
    private static List<Posture> way(Exercise exercise) {
        List<KeyPose> poses = exercise.movement().poses();
        Posture start = poses.get(0).posture(Map.of());
        Posture end = poses.get(1).posture(Map.of());
        int steps = (int) DATA.value("standard-steps");
        var way = new ArrayList<Posture>();
        for (int i = 0; i <= steps; i++) {
            way.add(start.towards(end, (double) i / steps));
        }
        return way;
    }

    private static List<String> notModelled(Exercise exercise, Pathway pathway) {
        List<KeyPose> poses = exercise.movement().poses();
        var joints = new TreeSet<String>();
        poses.forEach(pose -> joints.addAll(PathwayModel.notModelled(pose.posture(Map.of()), pathway)));
        return List.copyOf(joints);
    }
}
