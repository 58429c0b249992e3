package slipway.app.upkeep;

import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import slipway.care.caseload.CaseloadFigures;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.access.Clinic;

/** Works out the figures of every clinic's caseload, so that nobody has to wait for those of a large one. */
final class NightlyFigures {
    private final Records records;
    private final Clock clock;

    NightlyFigures(Records records, Clock clock) {
        this.records = records;
        this.clock = clock;
    }

    /** How many clinics and episodes. */
    String run() {
        List<Clinic> clinics = records.clinics().list();
        long episodes = 0;
        for (Clinic clinic : clinics) {
            var act = new Act("figures", Role.PROGRAM, clinic.id(), clock.instant());
            episodes += CaseloadFigures.workOut(records.caseload(), ZoneId.systemDefault(), act)
                    .report()
                    .episodes();
        }
        return "figures of %d clinics over %d episodes".formatted(clinics.size(), episodes);
    }
}
