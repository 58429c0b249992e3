package slipway.web.clinic;

import java.util.List;
import java.util.Optional;
import slipway.web.alerts.Escalation;
import slipway.web.hours.OpeningHours;

/** A setting that a clinic lead can change: its key, what it is if nobody has, and what it may be. */
enum ClinicSetting {
    UNITS("units", "metric", "metric|us"),
    IDLE_MINUTES("idleMinutes", "15", "([5-9]|[1-9]\\d|1[01]\\d|120)"),
    OPENING_HOURS(OpeningHours.SETTING, OpeningHours.USUAL, "[A-Za-z0-9:,; -]{0,200}"),
    ALERT_MINUTES(Escalation.SETTING, Escalation.USUAL_MINUTES, "([5-9]|[1-9]\\d|1[01]\\d|120)"),
    CLOSED_ADVICE("closedAdvice", "", ".{0,300}"),
    BIRTH_YEAR("codeBirthYear", "no", "yes|no"),
    /** Common practice is a backup every night; beyond two days one was missed. */
    BACKUP_DAYS("backupDays", "2", "[1-9]\\d?");

    private final String key;
    private final String otherwise;
    private final String form;

    ClinicSetting(String key, String otherwise, String form) {
        this.key = key;
        this.otherwise = otherwise;
        this.form = form;
    }

    String key() {
        return key;
    }

    String otherwise() {
        return otherwise;
    }

    boolean takes(String value) {
        return value.matches(form)
                && (this != OPENING_HOURS || OpeningHours.read(value).isPresent());
    }

    static Optional<ClinicSetting> find(String key) {
        return List.of(values()).stream().filter(each -> each.key.equals(key)).findFirst();
    }
}
