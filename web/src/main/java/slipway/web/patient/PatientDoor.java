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
import slipway.care.record.chart.EpisodeState;
import slipway.web.door.PatientUser;
import slipway.web.episode.Cases;
import slipway.web.episode.home.HomeCourse;

/**
 * Lets a person in by a code, and asks at every page whether the code still holds. A code belongs to one episode. It
 * opens what the therapist released last, never an older plan; with a closed episode it opens nothing.
 */
@Component
class PatientDoor {
    private static final int LONGEST_TOKEN = 100;

    private final Records records;
    private final HomeCourse course;
    private final Clock clock;

    PatientDoor(Records records, HomeCourse course, Clock clock) {
        this.records = records;
        this.course = course;
        this.clock = clock;
    }

    /**
     * What a code has opened.
     *
     * @param home what the therapist released last
     */
    record Opened(AccessLink link, Chart chart, HomeCourse.Home home, Clinic clinic) {
        /** Whether the therapist has released another plan since the code was given. */
        boolean planIsNewer() {
            return link.planVersion().isPresent()
                    && link.planVersion().getAsInt() != home.plan().number();
        }
    }

    /** The link of a code that opens the guide now; an unknown, expired and revoked one are the same to the asker. */
    Optional<AccessLink> usable(String token) {
        return token.length() > LONGEST_TOKEN
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
            if (chart(link, act).isPresent()) {
                records.links().used(link.id(), act);
                return Optional.of(new PatientUser(link.id(), clinic.id()));
            }
        }
        return Optional.empty();
    }

    private Optional<Chart> chart(AccessLink link, Act act) {
        return records.charts()
                .open(link.episodeId(), act)
                .chartIfOpen()
                .filter(chart -> chart.episode().state() != EpisodeState.CLOSED);
    }

    /** What whoever asks has open, if the code still holds; looked up anew at each request. */
    Optional<Opened> opened() {
        @Nullable Authentication held = SecurityContextHolder.getContext().getAuthentication();
        if (held == null || !(held.getPrincipal() instanceof PatientUser user)) {
            return Optional.empty();
        }
        var act = new Act(user.linkId(), Role.PATIENT, user.clinicId(), clock.instant());
        return records.links()
                .findById(user.linkId())
                .filter(this::isUsable)
                .flatMap(link -> chart(link, act)
                        .flatMap(
                                chart -> course.home(chart).map(home -> new Opened(link, chart, home, clinic(chart)))));
    }

    /** For whom no code tells the clinic: all of this program, mostly one. */
    List<Clinic> clinics() {
        return records.clinics().list();
    }

    private Clinic clinic(Chart chart) {
        return records.clinics().find(chart.episode().clinicId()).orElseThrow();
    }
}
