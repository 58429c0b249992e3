package slipway.study.person;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipway.study.load.LoadProfile;
import slipway.study.random.Noise;
import slipway.study.world.Trait;

/** One person in the course of care. Not thread-safe; one object for every way of dosing. */
public final class SimulatedPerson {
    private static final int EVENT = 50;
    private static final int ONSET = 60;
    private static final int JUDGED = 61;
    private static final int IN_ROOM = 90;

    private final Hidden hidden;
    private final Noise noise;
    private final Nerve nerve;
    private final Habits habits;
    private final Map<Event, Integer> openSince = new EnumMap<>(Event.class);
    private int day;
    private int inRoom;
    private boolean flaredToday;

    /** The person on the day before care begins. */
    public SimulatedPerson(Hidden hidden, int days) {
        this.hidden = hidden;
        noise = hidden.noise();
        nerve = new Nerve(hidden, days);
        habits = new Habits(hidden);
    }

    /** The day begins. */
    public void startDay(int today) {
        day = today;
        inRoom = 0;
        nerve.startDay(today);
        flaredToday = nerve.worseMorning();
        if (today > 0) {
            // On the first day everybody has just been screened.
            happens(Event.EMERGENCY, Trait.EMERGENCY);
            happens(Event.WEAKNESS, Trait.WEAKNESS);
            happens(Event.NUMBNESS, Trait.NUMBNESS);
        }
    }

    private void happens(Event event, Trait rate) {
        if (noise.uniform(EVENT, day, event.ordinal()) < hidden.get(rate)) {
            openSince.putIfAbsent(event, day);
        }
    }

    /** The day ends. */
    public void endDay() {
        if (flaredToday) {
            habits.flared(day);
        }
        nerve.endDay();
    }

    /** Whether the person does a planned session. */
    public boolean does(int index) {
        return habits.does(day, index);
    }

    /** Does a session. */
    public Felt session(int index, int rung, int repetitions) {
        Felt felt = nerve.session(day, index, hidden.loads().rungPct()[rung], repetitions);
        flaredToday |= felt.flare();
        return felt;
    }

    /** Does a set under the therapist's eyes. */
    public Felt tryInRoom(int rung, int repetitions) {
        return session(IN_ROOM + inRoom++, rung, repetitions);
    }

    /** What is told of a session. */
    public Optional<Told> tell(int index, int planned, Felt felt) {
        return habits.tell(day, index, planned, felt, nerve, openSince.keySet());
    }

    /** What is told of a session that was not done; mostly nothing. */
    public Optional<Told> claim(int index, int planned) {
        return habits.claim(day, index, planned, nerve);
    }

    /** What is told on a day without exercise. */
    public Optional<Told> tellRest() {
        return habits.tellRest(day, nerve, openSince.keySet());
    }

    /** Events that began today and that the person telephones about. */
    public Set<Event> phoned() {
        Set<Event> calls = EnumSet.noneOf(Event.class);
        openSince.forEach((event, since) -> {
            if (since == day && habits.phones(event)) {
                calls.add(event);
            }
        });
        return calls;
    }

    /** Events that have happened and were not answered, with their day. */
    public Map<Event, Integer> openEvents() {
        return openSince.isEmpty() ? Map.of() : new EnumMap<>(openSince);
    }

    /** The event was answered: examined, sent on or cleared. */
    public void answered(Event event) {
        openSince.remove(event);
    }

    /** Whether today brought a flare: in a session, long to settle, or a worse morning. */
    public boolean flaredToday() {
        return flaredToday;
    }

    /** Load at which symptoms begin now, without the chance of the day. */
    public double tolerancePct() {
        return nerve.capacityPct() * Math.exp(-nerve.sensitised());
    }

    /** Whether the leg may be raised this far before symptoms begin, apart from the chance of the day. */
    public boolean reaches(double raiseDeg) {
        return tolerancePct() >= hidden.loads().atRaise(raiseDeg);
    }

    /** The leg raise at which the symptom begins today, as a therapist reads it, deg. */
    public double measuredOnsetDeg(double errorDeg) {
        LoadProfile loads = hidden.loads();
        double atDeg = loads.raiseAt(nerve.thresholdPct());
        return Math.max(0, atDeg + errorDeg * noise.normal(ONSET, day, 0));
    }

    /** The irritability trait as a therapist judges it on the first day, in standard deviations. */
    public double judgedTrait(double error) {
        return hidden.get(Trait.IRRITABILITY_TRAIT) + error * noise.normal(JUDGED, -1, 0);
    }

    /** Usual symptom now, whole points. */
    public int usualSymptom() {
        return (int) Math.round(nerve.symptom());
    }

    /** Share of what was missing that has come back, without passing sensitisation. */
    public double recovered() {
        double missing = hidden.fullTolerancePct() - hidden.startTolerancePct();
        return missing <= 0 ? 1 : (nerve.capacityPct() - hidden.startTolerancePct()) / missing;
    }

    /** What is hidden. */
    public Hidden hidden() {
        return hidden;
    }
}
