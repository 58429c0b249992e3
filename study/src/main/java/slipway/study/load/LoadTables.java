package slipway.study.load;

import java.util.ArrayList;
import java.util.List;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.KeyPose;
import slipway.exercises.exercise.OpenAngle;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.PostureResponse;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.parameters.DrawSet;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.pathway.PathwayModel;

/** Makes the load table from the nerve model: some hundred postures for each body, about a second on one core. */
public final class LoadTables {
    private static final String REST = "lying knees bent";
    private static final double PERCENT = 100;

    private LoadTables() {}

    /** The table of all bodies and places of the data files. */
    public static LoadTable compute() {
        Tabulation how = Tabulation.standard();
        DrawSet draws = FittedParameters.bundled().draws(how.draws(), how.seed());
        List<TroublePlace> places = TroublePlace.all();
        var bodies = new ArrayList<SiteLoads[]>();
        for (double statureM : LoadTable.statures()) {
            var model = new PathwayModel(new Person(statureM), draws);
            bodies.add(places.stream().map(place -> loads(model, place, how)).toArray(SiteLoads[]::new));
        }
        return new LoadTable(LoadTable.statureWeights(), places, bodies.toArray(SiteLoads[][]::new), how.draws());
    }

    private static SiteLoads loads(PathwayModel model, TroublePlace place, Tabulation how) {
        Site site = Site.get(place.site());
        List<PostureResponse> responses = model.respondAlong(postures(place, how));
        double[][] placePct = new double[how.draws()][responses.size()];
        double[][] tractPct = new double[how.draws()][responses.size()];
        for (int p = 0; p < responses.size(); p++) {
            double[] strain = responses.get(p).strainAt(site);
            double[] mean = responses.get(p).meanPositiveStrain(site.tract());
            for (int d = 0; d < how.draws(); d++) {
                placePct[d][p] = PERCENT * strain[d];
                tractPct[d][p] = PERCENT * mean[d];
            }
        }
        return new SiteLoads(place.exercises().size(), how, placePct, tractPct);
    }

    /** Rest, then every exercise from its start to its farthest, then the leg raises. */
    private static List<Posture> postures(TroublePlace place, Tabulation how) {
        var postures = new ArrayList<Posture>();
        postures.add(Position.get(REST).posture());
        for (String id : place.exercises()) {
            Exercise exercise = Catalogue.bundled().get(id);
            Posture start = exercise.movement().poses().get(0).posture(java.util.Map.of());
            Posture farthest = farthest(
                    exercise.movement().poses().get(0),
                    exercise.movement().poses().get(1));
            for (int s = 0; s <= how.rangeSteps(); s++) {
                postures.add(start.towards(farthest, (double) s / how.rangeSteps()));
            }
        }
        Posture straight = Posture.parse(place.testPosture());
        for (int r = 0; r < how.raises(); r++) {
            postures.add(straight.with(Joint.HIP, r * how.raiseStepDeg()));
        }
        return postures;
    }

    /** The far pose with its moving joints as far as the exercise allows; a joint open in both poses is held as shown. */
    private static Posture farthest(KeyPose start, KeyPose far) {
        Posture posture = far.posture(java.util.Map.of());
        for (OpenAngle angle : far.open().values()) {
            if (!start.open().containsKey(angle.joint())) {
                posture = posture.with(angle.joint().joint(), angle.joint().limb(), angle.farthestDeg());
            }
        }
        return posture;
    }
}
