package slipway.documents.sheet;

/** How much of one exercise in a session and how often a day. */
public sealed interface Dose {

    /** Sessions a day, 1 to 12. */
    int sessionsPerDay();

    /** Movements there and back; {@code secondsEachWay} for each direction. */
    record Repeated(int repetitions, int sets, int secondsEachWay, int sessionsPerDay) implements Dose {
        public Repeated {
            Checks.within("repetitions", 1, 100, repetitions);
            Checks.within("sets", 1, 20, sets);
            Checks.within("seconds each way", 1, 60, secondsEachWay);
            Checks.within("sessions a day", 1, 12, sessionsPerDay);
        }
    }

    /** A position that is held, such as a stretch. */
    record Held(int holdSeconds, int repetitions, int sessionsPerDay) implements Dose {
        public Held {
            Checks.within("seconds to hold", 1, 3600, holdSeconds);
            Checks.within("repetitions", 1, 100, repetitions);
            Checks.within("sessions a day", 1, 12, sessionsPerDay);
        }
    }

    /** Something that goes on for minutes, such as walking. */
    record Lasting(int minutes, int sessionsPerDay) implements Dose {
        public Lasting {
            Checks.within("minutes", 1, 24 * 60, minutes);
            Checks.within("sessions a day", 1, 12, sessionsPerDay);
        }
    }
}
