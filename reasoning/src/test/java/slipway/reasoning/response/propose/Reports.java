package slipway.reasoning.response.propose;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import slipway.reasoning.irritability.Irritability;
import slipway.reasoning.response.checkin.CheckIn;
import slipway.reasoning.response.checkin.EmergencyAnswer;
import slipway.reasoning.response.checkin.Kind;
import slipway.reasoning.response.checkin.Morning;
import slipway.reasoning.response.checkin.Reach;
import slipway.reasoning.response.estimate.Prior;
import slipway.reasoning.response.ladder.Ceiling;
import slipway.reasoning.response.ladder.HomeDose;
import slipway.reasoning.response.ladder.Ladder;

/** A plan and reports on it, for tests. */
final class Reports {
    static final OffsetDateTime FIRST = OffsetDateTime.parse("2026-03-02T07:30:00+01:00");
    static final Ladder LADDER = Ladder.through(new HomeDose(5, 1, 1, 1, 3), new Ceiling(10, 2, 1));

    private Reports() {}

    /** Two glides with loads of half to all of the tolerance. */
    static FollowedPlan plan() {
        return new FollowedPlan(
                List.of(glide("first", 0.7), glide("second", 0.6)),
                Optional.of(Prior.of(0, 0.2, Irritability.MODERATE)),
                42);
    }

    /** One glide without an estimate: the rules alone. */
    static FollowedPlan byRules() {
        return new FollowedPlan(List.of(new FollowedExercise("first", LADDER, false, List.of())), Optional.empty(), 0);
    }

    private static FollowedExercise glide(String id, double share) {
        List<Double> peaks = IntStream.range(0, LADDER.rungs().size())
                .mapToObj(rung -> share * LADDER.dose(rung).rangeFraction())
                .toList();
        return new FollowedExercise(id, LADDER, false, peaks);
    }

    /** What a test says of a session; the rest is told as harmless. */
    static CheckIn of(String exercise, int day, int before, int worst, double settleMinutes) {
        return of(exercise, day, before, worst, settleMinutes, Morning.SAME, EmergencyAnswer.NO);
    }

    static CheckIn of(
            String exercise,
            int day,
            int before,
            int worst,
            double settleMinutes,
            Morning morning,
            EmergencyAnswer emergency) {
        OffsetDateTime start = FIRST.plusDays(day);
        return new CheckIn(
                exercise + "-" + day,
                "s" + day,
                exercise,
                start,
                OptionalInt.of(before),
                OptionalInt.of(5),
                OptionalInt.of(worst),
                Optional.of(Kind.TINGLING),
                Optional.empty(),
                Optional.of(Reach.CALF),
                OptionalDouble.of(settleMinutes),
                Optional.of(morning),
                false,
                false,
                emergency,
                Optional.empty(),
                start.plusHours(23));
    }

    /** The same report once more, received later under another id. */
    static CheckIn again(CheckIn report, OffsetDateTime receivedAt) {
        return new CheckIn(
                report.id() + "-again",
                report.sessionId(),
                report.exercise(),
                report.startedAt(),
                report.before(),
                report.repetitionsDone(),
                report.worst(),
                report.kind(),
                report.usualPain(),
                report.reach(),
                report.settleMinutes(),
                report.nextMorning(),
                report.stillNumb(),
                report.newWeakness(),
                report.emergency(),
                report.flareExercise(),
                receivedAt);
    }
}
