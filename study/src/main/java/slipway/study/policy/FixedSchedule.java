package slipway.study.policy;

import slipway.study.data.Settings;
import slipway.study.load.LoadProfile;
import slipway.study.person.Told;

/**
 * A fixed schedule: the same start, then evenly up to the full range and ten repetitions in six weeks, whatever the person
 * tells. Only signs of danger are answered.
 */
final class FixedSchedule implements Policy {
    private static final Settings CARE = Settings.load("care.csv");
    private static final int DAYS_TO_FULL = CARE.count("fixed-days");
    private static final int MOST_REPETITIONS = CARE.count("fixed-repetitions");
    private static final int SESSIONS = CARE.count("fixed-sessions");

    @Override
    public String id() {
        return "fixed";
    }

    @Override
    public String words() {
        return "The same start, then evenly to the full range in six weeks, whatever is reported.";
    }

    @Override
    public boolean readsDaily() {
        return false;
    }

    @Override
    public Course admit(Intake intake) {
        StartDose start = StartDose.of(intake.irritability());
        LoadProfile loads = intake.loads();
        return new Course() {
            private int first = -1;

            @Override
            public Asked today(int day) {
                double share = Math.min(1, (double) day / DAYS_TO_FULL);
                int rung = (int) (first + share * (loads.rungs() - 1 - first));
                int more = (int) (share * (MOST_REPETITIONS - start.repetitionsLow()));
                return new Asked(rung, start.repetitionsLow() + more, share < 0.5 ? start.sessionsLow() : SESSIONS);
            }

            @Override
            public Answer heard(Told told) {
                return SafetyAnswer.to(told);
            }

            @Override
            public void visit(int day, double onsetRaiseDeg, Room room) {
                if (first < 0) {
                    int aim = FirstRange.shortOfSymptoms(loads, onsetRaiseDeg, intake.irritability());
                    first = FirstRange.tried(aim, start.repetitionsLow(), room);
                }
            }
        };
    }
}
