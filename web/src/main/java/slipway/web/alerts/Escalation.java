package slipway.web.alerts;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.access.Clinic;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.follow.Alert;
import slipway.web.hours.OpeningHours;

/**
 * Hands an alert that nobody has taken to a lead, and after the same time again to another one if there is one. Time
 * counts while the clinic is open; while it is closed the person was told where to go. Of several servers one does it every
 * minute; two at once would do no harm: the level is raised only from where it was read.
 */
@Component
public class Escalation {
    /** Key of the setting: minutes within opening hours until an alert rises. */
    public static final String SETTING = "alertMinutes";

    /** What holds if nobody has set it; assumption. */
    public static final String USUAL_MINUTES = "30";

    /** The shortest that the setting can be, so that younger alerts need not be looked at. */
    private static final Duration SHORTEST = Duration.ofMinutes(5);

    private static final int HIGHEST_LEVEL = 2;
    private static final int MOST = 500;

    private final Records records;
    private final Clock clock;

    Escalation(Records records, Clock clock) {
        this.records = records;
        this.clock = clock;
    }

    /** Looks at all that stands; gives how many were raised. */
    public int run() {
        Instant now = clock.instant();
        Set<String> standing = records.alerts().standingSince(now.minus(SHORTEST), MOST).stream()
                .map(Alert::id)
                .collect(Collectors.toSet());
        if (standing.isEmpty()) {
            return 0;
        }
        int raised = 0;
        for (Clinic clinic : records.clinics().list()) {
            for (Alert alert : records.alerts().open(clinic.id())) {
                if (standing.contains(alert.id()) && raise(alert, clinic, now)) {
                    raised++;
                }
            }
        }
        return raised;
    }

    private boolean raise(Alert alert, Clinic clinic, Instant now) {
        if (alert.level() >= HIGHEST_LEVEL
                || openSince(alert.levelAt(), clinic, now).compareTo(after(clinic)) < 0) {
            return false;
        }
        Optional<String> lead = lead(alert, clinic);
        lead.ifPresent(owner -> records.alerts()
                .escalate(alert.id(), alert.level(), owner, new Act("escalation", Role.PROGRAM, clinic.id(), now)));
        return lead.isPresent();
    }

    /** Another than whoever has it; the first time also a lead who has it, so that it stands out. */
    private Optional<String> lead(Alert alert, Clinic clinic) {
        List<String> leads = records.staff().list(clinic.id()).stream()
                .filter(StaffAccount::active)
                .filter(account -> account.roles().contains(Role.LEAD))
                .map(StaffAccount::id)
                .toList();
        Optional<String> other =
                leads.stream().filter(id -> !id.equals(alert.ownerId())).findFirst();
        return alert.level() == 0 ? other.or(() -> leads.stream().findFirst()) : other;
    }

    private Duration after(Clinic clinic) {
        return Duration.ofMinutes(Long.parseLong(
                records.clinics().setting(clinic.id(), SETTING, USUAL_MINUTES).value()));
    }

    private Duration openSince(Instant since, Clinic clinic, Instant now) {
        String hours = records.clinics()
                .setting(clinic.id(), OpeningHours.SETTING, OpeningHours.USUAL)
                .value();
        // Hours that are not to be understood hold nothing up.
        return OpeningHours.read(hours)
                .map(open -> open.openBetween(since, now, ZoneId.systemDefault()))
                .orElseGet(() -> Duration.between(since, now));
    }
}
