package slipway.app.upkeep;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.Optional;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.Saving;
import slipway.care.record.access.Clinic;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.follow.Alert;

/**
 * Alerts that nobody took go to a lead after half an hour, and to another lead after half an hour more. Also while the
 * clinic is closed: whoever comes first in the morning sees them at the top.
 */
final class Escalation {
    /** Common practice; not from a published source. */
    static final Duration PATIENCE = Duration.ofMinutes(30);

    private static final int HIGHEST = 2;

    private final Records records;
    private final Clock clock;

    Escalation(Records records, Clock clock) {
        this.records = records;
        this.clock = clock;
    }

    /** Looks at all open alerts; gives words on how many went up. */
    String run() {
        Instant now = clock.instant();
        int raised = 0;
        for (Clinic clinic : records.clinics().list()) {
            var act = new Act("escalation", Role.PROGRAM, clinic.id(), now);
            for (Alert alert : records.alerts().open(clinic.id())) {
                boolean waits = alert.level() < HIGHEST
                        && !alert.levelAt().plus(PATIENCE).isAfter(now);
                if (waits && raise(alert, act)) {
                    raised++;
                }
            }
        }
        return raised == 0 ? "" : raised + " alerts went up a level";
    }

    private boolean raise(Alert alert, Act act) {
        String owner = lead(act.clinicId(), alert.ownerId()).orElse(alert.ownerId());
        return records.alerts().escalate(alert.id(), alert.level(), owner, act) instanceof Saving.Saved<Alert>;
    }

    private Optional<String> lead(String clinicId, String other) {
        return records.staff().list(clinicId).stream()
                .filter(account -> account.active() && account.roles().contains(Role.LEAD))
                .map(StaffAccount::id)
                .filter(id -> !id.equals(other))
                .min(Comparator.naturalOrder());
    }
}
