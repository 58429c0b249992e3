package slipway.care.bench;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import slipway.care.kept.KeptAnswers;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.nerve.Tract;
import slipway.mechanics.parameters.DrawSet;
import slipway.mechanics.pathway.PathwayModel;

/**
 * A body whose nerve is asked again and again: the last answers are kept, because the posture that others are compared
 * with comes back every time. Safe for several threads.
 */
public final class BenchBody {
    private static final int KEPT = 24;

    private final Person person;
    private final DrawSet draws;
    private final Map<Pathway, PathwayModel> models = new ConcurrentHashMap<>();
    private final KeptAnswers<Asked, PathwayModel.Whole> answers = new KeptAnswers<>(KEPT);

    private record Asked(Posture posture, Tract tract) {}

    private BenchBody(Person person, DrawSet draws) {
        this.person = person;
        this.draws = draws;
    }

    /** The body of a person in these draws. */
    public static BenchBody of(Person person, DrawSet draws) {
        return new BenchBody(person, draws);
    }

    /** The model that answers for a pathway; made when it is first asked for. */
    public PathwayModel model(Pathway pathway) {
        return models.computeIfAbsent(pathway, asked -> PathwayModel.of(asked, person, draws));
    }

    /**
     * What the model says about a posture; solved once. A known answer never waits for one that is being solved, and who
     * asks what is being solved waits for that.
     */
    public PathwayModel.Whole answer(Posture posture, Tract tract) {
        var asked = new Asked(posture, tract);
        return answers.get(asked, () -> model(tract.pathway()).whole(posture, tract));
    }
}
