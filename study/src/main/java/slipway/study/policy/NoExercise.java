package slipway.study.policy;

import slipway.study.person.Told;

/** No exercise at all: what the days bring by themselves. A reference, not care. */
final class NoExercise implements Policy {
    @Override
    public String id() {
        return "none";
    }

    @Override
    public String words() {
        return "No exercise at all; shows what comes without it.";
    }

    @Override
    public boolean readsDaily() {
        return false;
    }

    @Override
    public Course admit(Intake intake) {
        return new Course() {
            @Override
            public Asked today(int day) {
                return new Asked(0, 1, 0);
            }

            @Override
            public Answer heard(Told told) {
                return SafetyAnswer.to(told);
            }

            @Override
            public void visit(int day, double onsetRaiseDeg, Room room) {
                // Nothing is prescribed.
            }
        };
    }
}
