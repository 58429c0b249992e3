package slipway.web.patient;

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
import slipway.web.episode.Cases;

/** Lets a person in by a code, and asks at every page whether the code still holds. */
@Component
class PatientDoor {
    private final Records records;
    private final Clock clock;

    PatientDoor(Records records, Clock clock) {
        this.records = records;
        this.clock = clock;
    }

    /** The link of a code that opens the guide now; an unknown, expired and revoked one are the same to the asker. */
    Optional<AccessLink> usable(String token) {
        return token.length() > 100
                ? Optional.empty()
                : records.links().find(Cases.digest(token)).filter(this::isUsable);
    }

    private boolean isUsable(AccessLink link) {
        return link.purpose() == LinkPurpose.GUIDE && link.isUsableAt(clock.instant());
    }

    /** Notes the use of a link and says who it is. */
    Optional<PatientUser> enter(AccessLink link) {
        // The clinic of the episode is not in the link: any act of the link finds it through the chart.
        for (Clinic clinic : records.clinics().list()) {
            var act = new Act(link.id(), Role.PATIENT, clinic.id(), clock.instant());
            if (records.charts().open(link.episodeId(), act).chartIfOpen().isPresent()) {
                records.links().used(link.id(), act);
                return Optional.of(new PatientUser(link.id(), link.episodeId(), clinic.id()));
            }
        }
        return Optional.empty();
    }

    /** The chart of whoever asks, if the code still holds. */
    Optional<Chart> chart() {
        @Nullable Authentication held = SecurityContextHolder.getContext().getAuthentication();
        if (held == null || !(held.getPrincipal() instanceof PatientUser user)) {
            return Optional.empty();
        }
        return records.links()
                .findById(user.linkId())
                .filter(this::isUsable)
                .flatMap(link -> records.charts()
                        .open(user.episodeId(), new Act(user.linkId(), Role.PATIENT, user.clinicId(), clock.instant()))
                        .chartIfOpen());
    }

    /** For whom no code tells the clinic: all of this program, mostly one. */
    List<Clinic> clinics() {
        return records.clinics().list();
    }

    Clinic clinic(Chart chart) {
        return records.clinics().find(chart.episode().clinicId()).orElseThrow();
    }
}
