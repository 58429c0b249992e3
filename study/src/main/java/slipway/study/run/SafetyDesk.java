package slipway.study.run;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import slipway.study.data.Settings;
import slipway.study.person.Event;
import slipway.study.person.SimulatedPerson;
import slipway.study.person.Told;
import slipway.study.policy.Answer;

/**
 * Follows every sign of danger from its day to its answer, alike for all ways of dosing. A sign is missed if a report of it
 * was read and not answered as it must be.
 */
final class SafetyDesk {
    private static final Settings CARE = Settings.load("care.csv");
    private static final int CONTACT_REST = CARE.count("contact-rest");
    private static final int REVIEW_REST = CARE.count("review-rest");

    private final SimulatedPerson person;
    private final Outcome outcome;
    private final Map<Event, Integer> began = new EnumMap<>(Event.class);
    private final Set<Event> told = EnumSet.noneOf(Event.class);
    private final Set<Event> missed = EnumSet.noneOf(Event.class);
    private boolean away;
    private int restUntil;
    private boolean locked;

    SafetyDesk(SimulatedPerson person, Outcome outcome) {
        this.person = person;
        this.outcome = outcome;
    }

    /** Counts what happened by itself today. */
    void count(int day) {
        person.openEvents().forEach((event, since) -> {
            if (since == day) {
                began.put(event, day);
                told.remove(event);
                missed.remove(event);
                outcome.add(Measure.EVENTS, 1);
            }
        });
    }

    /** A report was sent. */
    void told(Told report) {
        report.events().forEach(this::told);
    }

    private void told(Event event) {
        if (person.openEvents().containsKey(event) && told.add(event)) {
            outcome.add(Measure.EVENTS_TOLD, 1);
        }
    }

    /** A report was read and answered. */
    void answer(int day, Told report, Answer answer) {
        for (Event event : report.events()) {
            if (!person.openEvents().containsKey(event)) {
                mistaken(day, event, report, answer);
            } else if (answer.compareTo(needed(event)) >= 0) {
                answered(day, event);
            } else if (missed.add(event)) {
                outcome.add(Measure.MISSED_SAFETY, 1);
            }
        }
    }

    /** Either an old report of what was answered since, or a slip of the finger; the slip needs its answer too. */
    private void mistaken(int day, Event event, Told report, Answer answer) {
        if (began.getOrDefault(event, Integer.MAX_VALUE) <= report.day()) {
            return;
        }
        outcome.add(Measure.MISTAKEN_ALARMS, 1);
        if (answer.compareTo(needed(event)) < 0) {
            outcome.add(Measure.MISSED_SAFETY, 1);
        } else if (day == report.day()) {
            rest(day, REVIEW_REST);
        }
    }

    private static Answer needed(Event event) {
        return event == Event.EMERGENCY ? Answer.EMERGENCY : Answer.CONTACT;
    }

    private void answered(int day, Event event) {
        outcome.add(Measure.ANSWERED, 1);
        outcome.add(Measure.ALERT_DAYS, day - began.getOrDefault(event, day));
        person.answered(event);
        if (event == Event.EMERGENCY) {
            away = true;
        } else {
            rest(day, CONTACT_REST);
        }
    }

    private void rest(int day, int restDays) {
        restUntil = Math.max(restUntil, day + restDays);
        locked = true;
    }

    /** People who read the sheet telephone on the day. */
    void phone(int day) {
        for (Event event : person.phoned()) {
            told(event);
            answered(day, event);
        }
    }

    /** At a visit the therapist asks, and people tell. */
    void ask(int day) {
        for (Event event : person.openEvents().keySet()) {
            told(event);
            answered(day, event);
        }
    }

    /** Whether nothing stands against exercise today. */
    boolean mayExercise(int day) {
        return !away && day >= restUntil;
    }

    /** Whether the episode has ended with an emergency. */
    boolean away() {
        return away;
    }

    /** Whether today, after an examination, exercise may begin again. */
    boolean releases(int day) {
        boolean now = locked && mayExercise(day);
        if (now) {
            locked = false;
        }
        return now;
    }
}
