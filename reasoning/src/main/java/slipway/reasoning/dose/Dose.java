package slipway.reasoning.dose;

/** How often and how fast. */
public record Dose(int repetitions, int sets, int sessionsPerDay, double secondsPerDirection) {
    public Dose {
        if (repetitions < 1 || sets < 1 || sessionsPerDay < 1 || !(secondsPerDirection > 0)) {
            throw new IllegalArgumentException(
                    "a dose needs 1 or more of each and time above 0 s, was %d x %d x %d at %s s"
                            .formatted(repetitions, sets, sessionsPerDay, secondsPerDirection));
        }
    }

    /** The first dose under a rule. */
    static Dose start(StartRule rule) {
        return new Dose(rule.repetitionsLow(), rule.sets(), rule.sessionsLow(), rule.secondsPerDirection());
    }
}
