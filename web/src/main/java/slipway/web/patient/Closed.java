package slipway.web.patient;

import java.time.Clock;
import java.time.ZoneId;
import java.util.Optional;
import org.springframework.stereotype.Component;
import slipway.care.record.Records;
import slipway.care.record.access.Clinic;
import slipway.exercises.exercise.Language;
import slipway.web.hours.OpeningHours;

/** Whether a clinic is closed now, and where to go then. */
@Component
public class Closed {
    private final Records records;
    private final Clock clock;

    Closed(Records records, Clock clock) {
        this.records = records;
        this.clock = clock;
    }

    /**
     * What a page says.
     *
     * @param now whether the clinic is closed now; false as well if its hours are not to be understood
     * @param advice where to go when it is closed; never blank
     */
    public record Advice(boolean now, String advice) {}

    /** What to say of a clinic. */
    public Advice advice(Clinic clinic, Language language) {
        String own = records.clinics()
                .setting(clinic.id(), "closedAdvice", "")
                .value()
                .strip();
        Optional<OpeningHours> hours = OpeningHours.read(records.clinics()
                .setting(clinic.id(), OpeningHours.SETTING, OpeningHours.USUAL)
                .value());
        boolean closed =
                hours.isPresent() && !hours.get().isOpenAt(clock.instant().atZone(ZoneId.systemDefault()));
        return new Advice(closed, own.isEmpty() ? PatientViews.words(language).get("closed.usual") : own);
    }
}
