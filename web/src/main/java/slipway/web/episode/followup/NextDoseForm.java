package slipway.web.episode.followup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import slipway.care.follow.HomeSetting;
import slipway.web.form.FormReader;

/** The fields in which a therapist changes or refuses a proposed dose, as they were sent. */
public record NextDoseForm(
        String exercise,
        String action,
        String proposed,
        String repetitions,
        String sessions,
        String mostRepetitions,
        String mostSessions,
        String tried,
        String reason) {
    public NextDoseForm(
            @Nullable String exercise,
            @Nullable String action,
            @Nullable String proposed,
            @Nullable String repetitions,
            @Nullable String sessions,
            @Nullable String mostRepetitions,
            @Nullable String mostSessions,
            @Nullable String tried,
            @Nullable String reason) {
        this.exercise = FormReader.text(exercise).strip();
        this.action = FormReader.text(action).strip();
        this.proposed = FormReader.text(proposed).strip();
        this.repetitions = FormReader.text(repetitions).strip();
        this.sessions = FormReader.text(sessions).strip();
        this.mostRepetitions = FormReader.text(mostRepetitions).strip();
        this.mostSessions = FormReader.text(mostSessions).strip();
        this.tried = FormReader.text(tried).strip();
        this.reason = FormReader.text(reason).strip();
    }

    /**
     * What was read.
     *
     * @param mistakes each with the field that it belongs to
     */
    record Reading(Optional<HomeSetting> setting, List<Mistake> mistakes) {}

    /** What is wrong with a field, in words. */
    public record Mistake(String field, String words) {}

    /** The dose and ceiling of the fields. */
    Reading setting(int sets) {
        var mistakes = new ArrayList<Mistake>();
        int dose = number("repetitions", repetitions, 1, HomeSetting.MOST_REPETITIONS, mistakes);
        int often = number("sessions", sessions, 1, HomeSetting.MOST_SESSIONS, mistakes);
        int most =
                number("mostRepetitions", mostRepetitions, Math.max(1, dose), HomeSetting.MOST_REPETITIONS, mistakes);
        int mostOften = number("mostSessions", mostSessions, Math.max(1, often), HomeSetting.MOST_SESSIONS, mistakes);
        return mistakes.isEmpty()
                ? new Reading(Optional.of(new HomeSetting(dose, sets, often, most, mostOften)), mistakes)
                : new Reading(Optional.empty(), mistakes);
    }

    private static int number(String field, String text, int least, int most, List<Mistake> mistakes) {
        int value = text.matches("\\d{1,4}") ? Integer.parseInt(text) : -1;
        if (value < least || value > most) {
            mistakes.add(
                    new Mistake(field, FollowStep.WORDS.get("dose.within", least, most, text.isEmpty() ? "–" : text)));
        }
        return value;
    }
}
