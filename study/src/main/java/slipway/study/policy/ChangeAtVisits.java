package slipway.study.policy;

import slipway.reasoning.irritability.Irritability;
import slipway.study.data.Settings;
import slipway.study.load.LoadProfile;
import slipway.study.person.Told;

/**
 * The main comparator: start short of symptoms, change only at visits. The range is set anew short of the onset that the
 * visit measures and tried in the room; after a week with a flare it falls instead, and repetitions wait.
 */
final class ChangeAtVisits implements Policy {
    @Override
    public String id() {
        return "visits";
    }

    @Override
    public String words() {
        return "Start short of symptoms, change only at visits: the main comparator.";
    }

    @Override
    public boolean readsDaily() {
        return false;
    }

    @Override
    public Course admit(Intake intake) {
        return new VisitCourse(intake);
    }

    /** One person. */
    static final class VisitCourse implements Course {
        private static final Settings CARE = Settings.load("care.csv");
        private static final double FLARE_RISE = CARE.value("flare-rise");
        private static final double FLARE_SETTLE_MINUTES = CARE.value("flare-settle");

        private final LoadProfile loads;
        private final Irritability irritability;
        private final StartDose start;
        private Asked dose;
        private boolean begun;
        private boolean flaredSinceVisit;
        private int sessionsSinceVisit;

        VisitCourse(Intake intake) {
            loads = intake.loads();
            irritability = intake.irritability();
            start = StartDose.of(irritability);
            dose = new Asked(0, start.repetitionsLow(), start.sessionsLow());
        }

        @Override
        public Asked today(int day) {
            return dose;
        }

        @Override
        public Answer heard(Told told) {
            sessionsSinceVisit += told.repetitions() > 0 ? 1 : 0;
            flaredSinceVisit |= told.worst() - told.before() >= FLARE_RISE
                    || told.settleMinutes() > FLARE_SETTLE_MINUTES
                    || told.worseMorning();
            return SafetyAnswer.to(told);
        }

        @Override
        public void visit(int day, double onsetRaiseDeg, Room room) {
            int aim = FirstRange.shortOfSymptoms(loads, onsetRaiseDeg, irritability);
            if (!begun) {
                begun = true;
                dose = dose.at(FirstRange.tried(aim, dose.repetitions(), room));
            } else if (flaredSinceVisit) {
                dose = dose.at(Math.max(0, Math.min(aim, dose.rung() - 1)));
            } else if (sessionsSinceVisit > 0) {
                int rung = FirstRange.tried(Math.max(aim, dose.rung()), dose.repetitions(), room);
                dose = new Asked(rung, more(dose.repetitions()), Math.min(dose.sessions() + 1, start.sessionsHigh()));
            }
            flaredSinceVisit = false;
            sessionsSinceVisit = 0;
        }

        private static int more(int repetitions) {
            return slipway.reasoning.dose.DoseLadder.repetitions().stream()
                    .filter(step -> step > repetitions)
                    .findFirst()
                    .orElse(repetitions);
        }
    }
}
