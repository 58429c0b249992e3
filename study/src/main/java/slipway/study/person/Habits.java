package slipway.study.person;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import slipway.study.random.Noise;
import slipway.study.world.Trait;

/** What one person does of what is asked, and what the person tells of it. */
final class Habits {
    private static final int DOES = 30;
    private static final int CLAIMS = 31;
    private static final int SKIPS = 32;
    private static final int RATES = 33;
    private static final int RATES_BEFORE = 34;
    private static final int MINUTES = 35;
    private static final int MORNING = 36;
    private static final int TELLS = 37;
    private static final int TAPS = 38;
    private static final int PHONES = 39;
    private static final double WORST = 10;
    private static final int LONGEST_MINUTES = 24 * 60;

    private final Hidden hidden;
    private final Noise noise;
    private int lastFlareDay = Integer.MIN_VALUE / 2;

    Habits(Hidden hidden) {
        this.hidden = hidden;
        noise = hidden.noise();
    }

    /** Whether a planned session is done; {@code index} counts the sessions of the day from 0. */
    boolean does(int day, int index) {
        double chance = hidden.get(Trait.ADHERENCE) * Math.pow(hidden.get(Trait.ADHERENCE_PER_SESSION), index);
        if (day - lastFlareDay <= hidden.get(Trait.FLARE_MEMORY)) {
            chance *= hidden.get(Trait.ADHERENCE_AFTER_FLARE);
        }
        return noise.uniform(DOES, day, index) < chance;
    }

    void flared(int day) {
        lastFlareDay = day;
    }

    /** What is told of a session that was done. */
    Optional<Told> tell(int day, int index, int planned, Felt felt, Nerve nerve, Set<Event> open) {
        Trait skip = felt.flare() ? Trait.REPORT_SKIP_FLARE : Trait.REPORT_SKIP;
        if (noise.uniform(SKIPS, day, index) < hidden.get(skip)) {
            return Optional.empty();
        }
        double factor = hidden.get(Trait.REPORT_FACTOR);
        double sd = hidden.get(Trait.REPORT_NOISE);
        int before = points(felt.before() + sd * noise.normal(RATES_BEFORE, day, index));
        double rise = Math.max(0, factor * felt.rise() + sd * noise.normal(RATES, day, index));
        int worst = points(before + rise);
        double scatter = Math.exp(hidden.get(Trait.REPORT_SETTLE_SD) * noise.normal(MINUTES, day, index));
        int minutes = (int) Math.min(LONGEST_MINUTES, Math.round(factor * felt.settleMinutes() * scatter));
        return Optional.of(new Told(
                day,
                planned,
                planned,
                before,
                worst,
                minutes,
                morning(day, nerve),
                nerve.sensitised() > hidden.get(Trait.FURTHER_DOWN),
                toldEvents(day, index, open)));
    }

    /** A session that was not done but is told as done, all well. Diaries hold a quarter more than was done. */
    Optional<Told> claim(int day, int index, int planned, Nerve nerve) {
        double done = hidden.get(Trait.ADHERENCE);
        double chance = Math.min(1, hidden.get(Trait.OVER_REPORT) * done / (1 - done));
        if (noise.uniform(CLAIMS, day, index) >= chance) {
            return Optional.empty();
        }
        int before = points(nerve.symptom());
        return Optional.of(new Told(day, planned, planned, before, before, 0, false, false, Set.of()));
    }

    /** What is told on a day without exercise. */
    Optional<Told> tellRest(int day, Nerve nerve, Set<Event> open) {
        if (noise.uniform(SKIPS, day, 0) < hidden.get(Trait.REPORT_SKIP)) {
            return Optional.empty();
        }
        int before = points(nerve.symptom());
        boolean down = nerve.sensitised() > hidden.get(Trait.FURTHER_DOWN);
        return Optional.of(new Told(day, 0, 0, before, before, 0, morning(day, nerve), down, toldEvents(day, 0, open)));
    }

    private boolean morning(int day, Nerve nerve) {
        return nerve.worseMorning() && noise.uniform(MORNING, day, 0) >= hidden.get(Trait.REPORT_SKIP_FLARE);
    }

    private Set<Event> toldEvents(int day, int index, Set<Event> open) {
        Set<Event> told = EnumSet.noneOf(Event.class);
        if (!open.isEmpty() && noise.uniform(TELLS, day, index) < hidden.get(Trait.EVENT_REPORT)) {
            told.addAll(open);
        }
        if (noise.uniform(TAPS, day, index) < hidden.get(Trait.MISTAKEN_TAP)) {
            told.add(Event.EMERGENCY);
        }
        return told;
    }

    /** Whether this person telephones on the day of an event when nobody reads the diary. */
    boolean phones(Event event) {
        return noise.uniform(PHONES, -1, event.ordinal()) < hidden.get(Trait.PHONES);
    }

    private static int points(double value) {
        return (int) Math.round(Math.min(WORST, Math.max(0, value)));
    }
}
