package slipway.care.record.assembly;

import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.chart.Chart;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;

/** Puts a case file into the records. */
public final class CaseImport {
    private CaseImport() {}

    /**
     * A new person with one episode, and an entry in the trail that it was imported.
     *
     * @param therapistId account of whoever is in charge
     */
    public static Chart put(Records records, CaseSplit read, String therapistId, Act act) {
        String personId = records.people().add(read.person(), act).id();
        Chart chart = records.charts().begin(personId, read.side(), therapistId, read.sections(), act);
        records.trail()
                .note(
                        Chain.ofPerson(personId),
                        Action.IMPORT,
                        "episode",
                        chart.episode().id(),
                        act);
        return chart;
    }
}
