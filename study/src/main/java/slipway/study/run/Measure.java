package slipway.study.run;

/** What is counted for every person, in whole numbers. */
public enum Measure {
    /** Days with a flare: in a session, long to settle, or a worse morning; days without exercise count too. */
    FLARE_DAYS("flare days"),
    /** Sessions at home that flared. */
    FLARED_SESSIONS("flared sessions"),
    /** First day with a good session at the full range; the length of the study if there was none. */
    DAYS_TO_FULL_RANGE("days to full range"),
    /** 1 if there was one. */
    FULL_RANGE("reached full range"),
    /** First day on which the leg could be raised to the goal, apart from the chance of the day; else the length. */
    DAYS_TO_GOAL("days to goal"),
    /** 1 if at the goal on the last day. */
    GOAL("at goal at the end"),
    /** Signs of danger that happened. */
    EVENTS("signs of danger"),
    /** Of these, reported. */
    EVENTS_TOLD("reported"),
    /** Reported and not answered as they must be when the report was read, or never read. */
    MISSED_SAFETY("missed"),
    /** Days from a sign to its answer, for the answered ones. */
    ALERT_DAYS("days to answer"),
    /** Answered ones. */
    ANSWERED("answered"),
    /** Emergency answers for which nothing had happened. */
    MISTAKEN_ALARMS("mistaken alarms"),
    /** Sessions done. */
    SESSIONS("sessions done"),
    /** Repetitions done. */
    REPETITIONS("repetitions done"),
    /** Sum over repetitions of load in thousandths of the load that the person bears when well. */
    DOSE_PER_MILLE("dose"),
    /** Days on which no exercise was asked. */
    REST_DAYS("rest days");

    private final String words;

    Measure(String words) {
        this.words = words;
    }

    /** In words. */
    public String words() {
        return words;
    }
}
