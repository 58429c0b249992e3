package slipway.study.person;

import slipway.study.random.Noise;
import slipway.study.world.Trait;

/**
 * How one nerve answers to work and days.
 *
 * <p>A capacity (slow), a sensitisation (days) and a day factor (a day or two) together make the threshold:
 * {@code capacity × exp(−sensitised − day)}. Discomfort adds up over the repetitions of a session beyond the threshold and
 * fades between them; part of it shows later. Work near but below the threshold feeds, after a lag, a gain of what is
 * missing; overload takes back.
 */
public final class Nerve {
    private static final int DAY = 10;
    private static final int LIFE = 11;
    private static final int LIFE_SIZE = 12;
    private static final int EXECUTION = 13;
    private static final int SETTLE = 14;
    private static final int UNRELATED = 15;
    private static final int UNRELATED_LOT = 16;
    private static final int DROP = 17;
    private static final int DROP_DAY = 18;
    private static final double WORST = 10;

    private final Hidden hidden;
    private final Noise noise;
    private final int dropDay;
    private double capacityPct;
    private double sensitised;
    private double dayFactor;
    private double tomorrow;
    private double dayAfter;
    private double work;
    private double workLagged;
    private boolean worseMorning;

    Nerve(Hidden hidden, int days) {
        this.hidden = hidden;
        noise = hidden.noise();
        capacityPct = hidden.startTolerancePct();
        boolean drops = noise.uniform(DROP, -1, 0) < hidden.get(Trait.DROP);
        dropDay = drops ? (int) (days * noise.uniform(DROP_DAY, -1, 0)) : -1;
    }

    /** The night before and what the day brings by itself. */
    void startDay(int day) {
        double before = sensitised;
        sensitised *= Math.pow(0.5, 1 / hidden.get(Trait.SENSITISE_HALF));
        sensitise(hidden.get(Trait.SENSITISE) * tomorrow);
        tomorrow = dayAfter;
        dayAfter = 0;
        if (noise.uniform(LIFE, day, 0) < hidden.get(Trait.LIFE_EVENT)) {
            sensitise(hidden.get(Trait.LIFE_EVENT_SIZE) * noise.exponential(LIFE_SIZE, day, 0));
        }
        worseMorning = sensitised - before > hidden.get(Trait.WORSE_MORNING);
        if (day == dropDay) {
            capacityPct *= 1 - hidden.get(Trait.DROP_SIZE);
        }
        double memory = hidden.get(Trait.DAY_MEMORY);
        double fresh = hidden.get(Trait.DAY_NOISE) * noise.laplace(DAY, day, 0);
        dayFactor = memory * dayFactor + Math.sqrt(1 - memory * memory) * fresh;
        work = 0;
    }

    /** One go of repetitions; {@code index} tells the sessions of a day apart. */
    Felt session(int day, int index, double loadPct, int repetitions) {
        double sd = hidden.get(Trait.EXECUTION_SD);
        double done = loadPct * Math.exp(sd * noise.normal(EXECUTION, day, index) - sd * sd / 2);
        double ratio = done / thresholdPct();
        double added = hidden.get(Trait.RELATION) * addedUp(ratio, repetitions) + unrelated(day, index);
        double overload = Math.min(hidden.get(Trait.OVERLOAD_MOST), added);
        double before = symptom();
        double late = hidden.get(Trait.DELAY_SHARE);
        double rise = Math.min(WORST - before, WORST * (1 - Math.exp(-(1 - late) * overload)));
        take(overload, late);
        work += repetitions * workCounts(ratio);
        return new Felt(before, rise, settleMinutes(day, index, rise), overload);
    }

    private void sensitise(double more) {
        sensitised = Math.min(hidden.get(Trait.SENSITISED_MOST), sensitised + more);
    }

    private double addedUp(double ratio, int repetitions) {
        double beyond = Math.max(0, ratio - 1);
        double kept = hidden.get(Trait.CARRY_OVER);
        return hidden.get(Trait.REACTIVITY) * beyond * (1 - Math.pow(kept, repetitions)) / (1 - kept);
    }

    private double unrelated(int day, int index) {
        boolean comes = noise.uniform(UNRELATED, day, index) < hidden.get(Trait.UNRELATED_RATE);
        return comes ? hidden.get(Trait.UNRELATED_SIZE) * noise.exponential(UNRELATED_LOT, day, index) : 0;
    }

    private void take(double overload, double late) {
        sensitise(hidden.get(Trait.SENSITISE) * (1 - late) * overload);
        tomorrow += late * overload / 2;
        dayAfter += late * overload / 2;
        capacityPct *= 1 - Math.min(1, hidden.get(Trait.DAMAGE) * overload);
    }

    private double settleMinutes(int day, int index, double rise) {
        double doublings = Math.log(1 + rise / hidden.get(Trait.NOTICED)) / Math.log(2);
        return hidden.get(Trait.SETTLE_HALF)
                * doublings
                * Math.exp(hidden.get(Trait.SETTLE_SD) * noise.normal(SETTLE, day, index));
    }

    private double workCounts(double ratio) {
        double rising =
                (ratio - hidden.get(Trait.WORK_FROM)) / (hidden.get(Trait.WORK_FULL) - hidden.get(Trait.WORK_FROM));
        double falling =
                (hidden.get(Trait.WORK_NONE) - ratio) / (hidden.get(Trait.WORK_NONE) - hidden.get(Trait.WORK_LESS));
        return Math.max(0, Math.min(1, Math.min(rising, falling)));
    }

    /** What the day's work and time change. */
    void endDay() {
        double reached = work / (work + hidden.get(Trait.DOSE_HALF));
        workLagged += (reached - workLagged) / hidden.get(Trait.GAIN_LAG);
        double rate = hidden.get(Trait.DOSE_GAIN) * workLagged + Math.log(2) / hidden.get(Trait.RECOVERY_HALF);
        capacityPct += Math.max(0, hidden.fullTolerancePct() - capacityPct) * Math.min(1, rate);
    }

    /** Load at which symptoms begin now. */
    double thresholdPct() {
        return capacityPct * Math.exp(-sensitised - dayFactor);
    }

    /** The same without the day's chance and passing sensitisation. */
    double capacityPct() {
        return capacityPct;
    }

    double sensitised() {
        return sensitised;
    }

    boolean worseMorning() {
        return worseMorning;
    }

    /** Usual symptom now, 0 to 10: falls as the tolerance comes back, rises while sensitised. */
    double symptom() {
        double missing = Math.max(0, hidden.fullTolerancePct() - capacityPct)
                / Math.max(1e-9, hidden.fullTolerancePct() - hidden.startTolerancePct());
        double usual = hidden.get(Trait.USUAL_SYMPTOM) * Math.min(1.5, missing)
                + hidden.get(Trait.SYMPTOM_PER_SENSITISED) * sensitised;
        return Math.min(WORST, Math.max(0, usual));
    }
}
