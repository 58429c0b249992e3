package slipway.care.bench;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
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
    private final Map<Pathway, PathwayModel> models = new EnumMap<>(Pathway.class);
    private final Map<Asked, PathwayModel.Whole> answers = new LinkedHashMap<>(KEPT + 1, 1, true);

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
    public synchronized PathwayModel model(Pathway pathway) {
        return models.computeIfAbsent(pathway, asked -> PathwayModel.of(asked, person, draws));
    }

    /** What the model says about a posture; solved once. */
    public synchronized PathwayModel.Whole answer(Posture posture, Tract tract) {
        var asked = new Asked(posture, tract);
        PathwayModel.Whole known = answers.get(asked);
        if (known == null) {
            known = model(tract.pathway()).whole(posture, tract);
            answers.put(asked, known);
            if (answers.size() > KEPT) {
                answers.remove(answers.keySet().iterator().next());
            }
        }
        return known;
    }
}
