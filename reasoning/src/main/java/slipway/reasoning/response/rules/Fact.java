package slipway.reasoning.response.rules;

import java.util.Arrays;

/** What conditions may ask about. Yes is 1, no is 0; what is not known is not a number and meets no condition. */
public enum Fact {
    /** 1 yes, 2 "tapped by mistake". */
    EMERGENCY("emergency", ""),
    LOCKED("locked", ""),
    NEW_WEAKNESS("newWeakness", ""),
    STILL_NUMB("stillNumb", ""),
    /** Symptoms before this session as a share of those before the earlier ones. */
    PAIN_SHARE("painShare", "of the usual level"),
    RISE("rise", "points of 10"),
    WORST("worst", "points of 10"),
    NEW_PAIN("newPain", ""),
    FURTHER_DOWN("furtherDown", ""),
    MOVED_UP("movedUp", ""),
    /** Infinite if not settled when last told. */
    SETTLE_MINUTES("settleMinutes", "min"),
    /** Sessions in a row, up to this one, that took longer to settle than a good one. */
    SLOW_IN_A_ROW("slowInARow", "sessions"),
    WORSE_MORNING("worseMorning", ""),
    WORSE_MORNINGS_7_DAYS("worseMornings7Days", "mornings"),
    GAP_DAYS("gapDays", "days"),
    REST_DAY("restDay", ""),
    /** Whether it is no glide but has dose rules of its own. */
    COMPANION("companion", ""),
    /** Whether both rise and settle time are known. */
    TOLD("told", ""),
    /** Whether the last decision was to wait until back to usual. */
    PAUSED("paused", ""),
    /** Symptoms before this session over those before the earlier ones. */
    ABOVE_USUAL("aboveUsual", "points of 10"),
    /** Of the last five sessions, those that were good. */
    GOOD_OF_LAST_5("goodOfLast5", "sessions"),
    HOURS_AT_DOSE("hoursAtDose", "h"),
    /** Mornings after sessions at this dose that were told and not worse. */
    MORNINGS_AT_DOSE("morningsAtDose", "mornings"),
    STEPS_7_DAYS("steps7Days", "steps"),
    /** Daily repetitions after a step over the least of the last 7 days. */
    DAILY_RATIO("dailyRatio", "times"),
    BARRED("barred", ""),
    BELOW_CEILING("belowCeiling", ""),
    /** Whether a report asked for no step for some days. */
    STEP_WAITS("stepWaits", ""),
    /** Grades of strength lost on a re-test. */
    GRADES_LOST("gradesLost", "grades"),
    HEEL_RAISES_FEWER("heelRaisesFewer", "heel raises"),
    /** Only for rules on what the other rules led to. */
    EASING("easing", ""),
    PAST_LOWEST("pastLowest", ""),
    BY_STEP("byStep", ""),
    FAILED_BEFORE("failedBefore", "times"),
    /** Only for rules on the estimate: whether the dose in force, or the next rung, is beyond the limit. */
    OVER_LIMIT("overLimit", ""),
    NEXT_OVER_LIMIT("nextOverLimit", ""),
    STEP_ALLOWED("stepAllowed", ""),
    AT_LOWEST("atLowest", ""),
    SESSIONS("sessions", "sessions"),
    DAYS_AT_DOSE("daysAtDose", "days"),
    BLOCKED_DAYS("blockedDays", "days");

    private final String key;
    private final String unit;

    Fact(String key, String unit) {
        this.key = key;
        this.unit = unit;
    }

    /** The name in the rules. */
    public String key() {
        return key;
    }

    /** The unit; empty for counts without one and for yes and no. */
    public String unit() {
        return unit;
    }

    static Fact of(String key) {
        return Arrays.stream(values())
                .filter(fact -> fact.key.equals(key))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("unknown fact \"" + key + "\""));
    }
}
