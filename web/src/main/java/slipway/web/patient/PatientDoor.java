package slipway.web.patient;

import java.time.Clock;
import java.time.Instant;
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
import slipway.care.record.person.Age;
import slipway.web.door.PatientUser;
import slipway.web.door.Place;
import slipway.web.episode.Cases;
import slipway.web.episode.home.HomeCourse;
import slipway.web.told.FirstVisit;

/**
 * Lets a person in by a code, and asks at every page whether the code still holds. A code belongs to one episode and one
 * place: the questions before the first visit, or home. There it opens what the therapist released last, never an older plan; with a closed episode it opens nothing.
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

    /** The link of a code that opens something now; an unknown, expired and revoked one are the same to the asker. */
    Optional<AccessLink> usable(String token) {
        return token.length() > LONGEST_TOKEN
                ? Optional.empty()
                : records.links().find(Cases.digest(token)).filter(this::isUsable);
    }

    private boolean isUsable(AccessLink link) {
        return link.isUsableAt(clock.instant());
    }

    /** What a link opens. */
    static Place place(AccessLink link) {
        return link.purpose() == LinkPurpose.INTAKE ? Place.BEFORE : Place.HOME;
    }

    /** The link of a code that is shut because of wrong years of birth, and until when. */
    Optional<Instant> shutUntil(String token) {
        return token.length() > LONGEST_TOKEN
                ? Optional.empty()
                : records.links()
                        .find(Cases.digest(token))
                        .filter(link -> link.revokedAt().isEmpty())
                        .flatMap(AccessLink::lockedUntil)
                        .filter(clock.instant()::isBefore);
    }

    /** What came of opening a code. */
    sealed interface Entry {
        record In(PatientUser user) implements Entry {}

        record WrongYear() implements Entry {}

        record Nothing() implements Entry {}
    }

    /**
     * Notes the use of a link and says who it is.
     *
     * @param year of birth, where it is asked
     */
    Entry enter(AccessLink link, String year) {
        // The clinic of the episode is not in the link: any act of the link finds it through the chart.
        for (Clinic clinic : records.clinics().list()) {
            var act = new Act(link.id(), Role.PATIENT, clinic.id(), clock.instant());
            Optional<Chart> chart = chart(link, act);
            if (chart.isPresent()) {
                Optional<Age> age = chart.get().person().details().age();
                if (link.birthYearAsked()
                        && !age.map(known -> BirthYear.fits(known, year)).orElse(false)) {
                    records.links().failed(link.id(), BirthYear.lockedUntil(link.failures() + 1, clock.instant()), act);
                    return new Entry.WrongYear();
                }
                records.links().used(link.id(), act);
                return new Entry.In(new PatientUser(link.id(), clinic.id()));
            }
        }
        return new Entry.Nothing();
    }

    private Optional<Chart> chart(AccessLink link, Act act) {
        return records.charts()
                .open(link.episodeId(), act)
                .chartIfOpen()
                .filter(chart -> chart.episode().state() != EpisodeState.CLOSED)
                .filter(chart -> place(link) == Place.HOME || FirstVisit.isAhead(chart));
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
                .filter(link -> place(link) == Place.HOME && isUsable(link))
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
