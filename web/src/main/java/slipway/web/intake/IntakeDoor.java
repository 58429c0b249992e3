package slipway.web.intake;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.access.AccessLink;
import slipway.care.record.access.Clinic;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.chart.Chart;
import slipway.care.record.intake.Intake;
import slipway.web.door.PatientUser;
import slipway.web.told.FirstVisit;

/** What whoever asks has open before the first visit; looked up anew at each request. */
@Component
class IntakeDoor {
    private final Records records;
    private final Clock clock;

    IntakeDoor(Records records, Clock clock) {
        this.records = records;
        this.clock = clock;
    }

    /** What a code has opened. */
    record Opened(AccessLink link, Chart chart, Clinic clinic, Act act) {
        /** What came by this code, oldest first. Nothing of another code is seen: it may be in other hands. */
        List<Intake> told() {
            return chart.intakes().list().stream()
                    .filter(each -> each.linkId().equals(link.id()))
                    .toList();
        }

        /** What the person said "done" to; empty before that. */
        Optional<Intake> done() {
            return told().stream().filter(Intake::whole).findFirst();
        }
    }

    /** Empty if the code does not hold, is of another kind, or the first visit is over. */
    Optional<Opened> opened() {
        @Nullable Authentication held = SecurityContextHolder.getContext().getAuthentication();
        if (held == null || !(held.getPrincipal() instanceof PatientUser user)) {
            return Optional.empty();
        }
        var act = new Act(user.linkId(), Role.PATIENT, user.clinicId(), clock.instant());
        return records.links()
                .findById(user.linkId())
                .filter(link -> link.purpose() == LinkPurpose.INTAKE && link.isUsableAt(act.at()))
                .flatMap(link -> records.charts()
                        .open(link.episodeId(), act)
                        .chartIfOpen()
                        .filter(FirstVisit::isAhead)
                        .map(chart -> new Opened(link, chart, clinic(chart), act)));
    }

    private Clinic clinic(Chart chart) {
        return records.clinics().find(chart.episode().clinicId()).orElseThrow();
    }
}
