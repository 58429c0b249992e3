package slipway.reasoning.response.course;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import slipway.reasoning.response.rules.Asks;
import slipway.reasoning.response.rules.Condition;
import slipway.reasoning.response.rules.Decision;
import slipway.reasoning.response.rules.Fact;
import slipway.reasoning.response.rules.Facts;
import slipway.reasoning.response.rules.RuleBook;
import slipway.reasoning.response.rules.Ruling;

/**
 * What the rules say on one report of a course, and where the dose goes from there.
 *
 * @param course with the report, before the dose has moved
 * @param facts what the rules looked at
 * @param mostRung the highest rung that the rules allow next
 */
public record Ruled(Course course, Facts facts, Ruling ruling, int mostRung, long nowMinute) {
    /**
     * The ruling on a report.
     *
     * @param course with the session of the report
     * @param nowMinute when the report came
     * @param locked whether an earlier report stopped everything
     */
    public static Ruled on(Course course, String sessionId, long nowMinute, boolean locked) {
        int index = course.indexOf(sessionId);
        RuleBook book = RuleBook.bundled();
        Facts facts = new History(course, index).facts(nowMinute, locked);
        return finish(
                course,
                facts,
                book.onReport(facts),
                course.sessions().get(index).rung(),
                nowMinute);
    }

    private static Ruled finish(Course course, Facts facts, Ruling report, int doneRung, long nowMinute) {
        int target = target(course, report.asks(), doneRung);
        boolean byStep = course.current().byStep() && doneRung == course.rung();
        facts.set(Fact.EASING, report.decision().eases())
                .set(Fact.PAST_LOWEST, target < 0)
                .set(Fact.BY_STEP, byStep)
                .set(Fact.FAILED_BEFORE, course.failureOf(doneRung).times());
        Ruling ruling = RuleBook.bundled().onOutcome(report, facts);
        int most = ruling.decision() == Decision.STEP_UP
                ? course.rung() + 1
                : Math.min(course.rung(), Math.max(0, target));
        return new Ruled(course, facts, ruling, Math.min(most, course.ladder().top()), nowMinute);
    }

    /** The rung that the effects lead to from the dose that was done; below 0 if there is none so low. */
    private static int target(Course course, Asks asks, int doneRung) {
        int target = doneRung - asks.rungsDown();
        if (asks.halfRange()) {
            double half = CourseData.HALF_RANGE * course.ladder().dose(doneRung).rangeFraction();
            target = Math.min(target, course.ladder().withRangeAtMost(doneRung, half));
        }
        return target > 0 && asks.onceADay() ? course.ladder().onceADay(target) : target;
    }

    /**
     * The ruling once more with what the estimate says; eases if a rule on the estimate asks for it.
     *
     * @param overLimit whether the dose in force is beyond the limit
     * @param nextOverLimit whether the next rung is
     */
    public Ruled withEstimate(boolean overLimit, boolean nextOverLimit) {
        boolean stepAllowed = ruling.decision() == Decision.STEP_UP;
        long since = stepAllowed && nextOverLimit ? course.blockedSinceMinute().orElse(nowMinute) : nowMinute;
        Facts all = facts.copy()
                .set(Fact.OVER_LIMIT, overLimit)
                .set(Fact.NEXT_OVER_LIMIT, nextOverLimit)
                .set(Fact.STEP_ALLOWED, stepAllowed)
                .set(Fact.AT_LOWEST, course.rung() == 0)
                .set(Fact.SESSIONS, course.sessions().size())
                .set(Fact.DAYS_AT_DOSE, (double) (nowMinute - course.current().minute()) / CourseData.MINUTES_PER_DAY)
                .set(Fact.BLOCKED_DAYS, (double) (nowMinute - since) / CourseData.MINUTES_PER_DAY);
        Ruling estimated = RuleBook.bundled().onEstimate(ruling, all);
        int most = estimated.decision() == Decision.STEP_UP
                ? mostRung
                : Math.min(
                        mostRung, Math.max(0, course.rung() - estimated.asks().rungsDown()));
        return new Ruled(course, all, estimated, most, nowMinute);
    }

    /**
     * The course with the dose moved to this rung.
     *
     * @param rung at most {@link #mostRung()}
     * @throws IllegalArgumentException if it is more than the rules allow
     */
    public Course moveTo(int rung) {
        if (rung < 0 || rung > mostRung) {
            throw new IllegalArgumentException("the rules allow rungs 0 to %d, was %d".formatted(mostRung, rung));
        }
        Asks asks = ruling.asks();
        Decision decision = ruling.decision();
        boolean up = rung > course.rung();
        var changes = new ArrayList<>(course.changes());
        if (rung != course.rung()) {
            changes.add(new RungChange(nowMinute, rung, up));
        }
        return new Course(
                course.ladder(),
                course.companion(),
                course.sessions(),
                changes,
                !up && (course.slow() || asks.slower()),
                decision == Decision.PAUSE || (course.paused() && facts.get(Fact.REST_DAY) == 1),
                Math.max(course.noStepUntilMinute(), nowMinute + asks.noStepDays() * CourseData.MINUTES_PER_DAY),
                failures(asks),
                course.stopped() || decision == Decision.REST_AND_REVIEW,
                blockedSince(rung));
    }

    private List<Failure> failures(Asks asks) {
        if (asks.barDays() == 0) {
            return course.failures();
        }
        int failed = course.rung();
        var failures = new ArrayList<>(course.failures());
        failures.removeIf(failure -> failure.rung() == failed);
        long until = nowMinute + asks.barDays() * CourseData.MINUTES_PER_DAY;
        failures.add(new Failure(failed, course.failureOf(failed).times() + 1, until));
        return failures;
    }

    private OptionalLong blockedSince(int rung) {
        if (rung != course.rung() || ruling.decision().eases()) {
            return OptionalLong.empty();
        }
        boolean blocks = facts.get(Fact.STEP_ALLOWED) == 1 && facts.get(Fact.NEXT_OVER_LIMIT) == 1;
        return blocks && course.blockedSinceMinute().isEmpty()
                ? OptionalLong.of(nowMinute)
                : course.blockedSinceMinute();
    }

    /** What a step up still lacks: conditions of its rule; empty if it is allowed. */
    public List<Condition> lackingForStep() {
        return RuleBook.bundled().stepUp().when().stream()
                .filter(condition -> !condition.met(facts))
                .toList();
    }
}
