package slipway.care.loads;

import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import slipway.exercises.exercise.Exercise;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.pathway.PathwayModel;
import slipway.reasoning.basis.Coefficients;
import slipway.reasoning.dose.ExerciseCandidate;
import slipway.reasoning.dose.StandardLoads.Label;
import slipway.reasoning.tolerance.Interval;
import slipway.reasoning.tolerance.Movement;

/** The glides of the catalogue at a place of a standard body, to put them in an order; computed once per place. */
public final class GlideRanking {
    private static final Coefficients DATA = Coefficients.load("visit.csv");
    private static final Map<Site, GlideRanking> KNOWN = new ConcurrentHashMap<>();

    private final Map<String, GlideLoads.Row> rows = new HashMap<>();

    private GlideRanking(Site site) {
        GlideLoads.ofAllGlides(site, (int) DATA.value("ranking-draws"))
                .rows()
                .forEach(row -> rows.put(row.exercise().id(), row));
    }

    /** The ranking at a place. */
    public static GlideRanking at(Site site) {
        return KNOWN.computeIfAbsent(site, GlideRanking::new);
    }

    /** Median glide in mm. */
    public double glideMm(Exercise exercise) {
        return row(exercise).loads().glideMm().median();
    }

    /** Median of mm of glide per percent of load. */
    public double glideToLoad(Exercise exercise) {
        return row(exercise).loads().glideToLoad();
    }

    /** Whether the glide is large enough to speak of. */
    public boolean showsMovement(Exercise exercise) {
        return row(exercise).loads().label() != Label.NO_MOVEMENT;
    }

    /** Whether there is a glide to speak of and the model knows its direction. */
    public boolean knowsDirection(Exercise exercise) {
        Interval net = row(exercise).loads().netGlideMm();
        return showsMovement(exercise) && !(net.low() < 0 && net.high() > 0);
    }

    /** Whether joints take part that the nerve model leaves out. */
    public boolean leavesOutJoints(Exercise exercise) {
        return !row(exercise).notModelled().isEmpty();
    }

    /** Whether the nerve model leaves out the joint that leads. */
    public static boolean leadNotModelled(ExerciseCandidate candidate) {
        Movement lead = candidate.lead();
        Posture moved = Posture.reference().with(lead.joint(), lead.limb(), lead.toDeg());
        return !PathwayModel.notModelled(moved).isEmpty();
    }

    private GlideLoads.Row row(Exercise exercise) {
        GlideLoads.Row row = rows.get(exercise.id());
        if (row == null) {
            throw new IllegalArgumentException(exercise.id() + " is no glide of the catalogue");
        }
        return row;
    }
}
