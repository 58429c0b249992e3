package slipway.study.world;

import java.util.Arrays;
import java.util.Locale;

/** The hidden numbers of a simulated person; {@code people.csv} says what each is. */
public enum Trait {
    ONSET_RAISE,
    FULL_RAISE,
    IRRITABILITY_TRAIT,
    ONSET_LINK,
    REACTIVITY,
    REACTIVITY_LINK,
    CARRY_OVER,
    SETTLE_HALF,
    SETTLE_LINK,
    EXECUTION_SD,
    DAY_NOISE,
    DAY_MEMORY,
    SENSITISE,
    SENSITISE_HALF,
    LIFE_EVENT,
    LIFE_EVENT_SIZE,
    DELAY_SHARE,
    RELATION,
    UNRELATED_RATE,
    DOSE_GAIN,
    DOSE_HALF,
    GAIN_LAG,
    DAMAGE,
    RECOVERY_HALF,
    USUAL_SYMPTOM,
    ADHERENCE,
    ADHERENCE_PER_SESSION,
    ADHERENCE_AFTER_FLARE,
    OVER_REPORT,
    REPORT_NOISE,
    REPORT_FACTOR,
    REPORT_SKIP,
    REPORT_SKIP_FLARE,
    EMERGENCY,
    WEAKNESS,
    NUMBNESS,
    MISTAKEN_TAP,
    EVENT_REPORT,
    PHONES,
    DROP,
    DROP_SIZE,
    WORSE_MORNING,
    SYMPTOM_PER_SENSITISED,
    SPREAD_ALONG,
    LEAST_TOLERANCE,
    FURTHER_DOWN,
    WORK_FROM,
    WORK_FULL,
    WORK_LESS,
    WORK_NONE,
    SETTLE_SD,
    NOTICED,
    UNRELATED_SIZE,
    FLARE_MEMORY,
    REPORT_SETTLE_SD,
    OVERLOAD_MOST,
    SENSITISED_MOST;

    /** The name in the tables, for example {@code settle-half}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Trait get(String id) {
        return Arrays.stream(values())
                .filter(trait -> trait.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("unknown hidden number " + id));
    }
}
