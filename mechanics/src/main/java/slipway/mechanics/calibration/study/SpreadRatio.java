package slipway.mechanics.calibration.study;

import java.util.List;
import java.util.stream.IntStream;
import slipway.mechanics.body.Person;
import slipway.mechanics.calibration.EvidenceRow;
import slipway.mechanics.calibration.Prediction;
import slipway.mechanics.calibration.Quantity;
import slipway.mechanics.parameters.DrawSet;
import slipway.mechanics.parameters.FittedParameters;
import slipway.mechanics.pathway.PathwayModel;

/**
 * Predicted spread of a row beside the published spread between people.
 *
 * @param row a row whose sd was published
 * @param people predicted sd from the spread between people alone, every site in its place, over the published one
 * @param all predicted sd over all draws (people, uncertainty of the fit, places of the sites), over the published one
 */
public record SpreadRatio(EvidenceRow row, double people, double all) {

    /** The ratios of every row of the table that was measured and whose sd was published. */
    static List<SpreadRatio> of(FittedParameters parameters, List<EvidenceRow> table) {
        List<EvidenceRow> rows = table.stream().filter(SpreadRatio::published).toList();
        var certain = new FittedParameters(
                parameters.mean(),
                new double[parameters.mean().length][parameters.mean().length],
                parameters.personSd(),
                parameters.evidenceSha256());
        List<Prediction> people = predict(new DrawSet(certain.standardDraws().vectors(), 0), rows);
        List<Prediction> all = predict(parameters.standardDraws(), rows);
        return IntStream.range(0, rows.size())
                .mapToObj(i -> ratio(rows.get(i), people.get(i), all.get(i)))
                .toList();
    }

    private static boolean published(EvidenceRow row) {
        var published = row.published();
        return row.quantity() != Quantity.ORDER && published.sd().isPresent() && !published.sdAssumed();
    }

    private static List<Prediction> predict(DrawSet draws, List<EvidenceRow> rows) {
        return Prediction.of(new PathwayModel(Person.STANDARD, draws), rows);
    }

    private static SpreadRatio ratio(EvidenceRow row, Prediction people, Prediction all) {
        double published = row.published().sd().orElseThrow();
        return new SpreadRatio(row, people.sd() / published, all.sd() / published);
    }
}
