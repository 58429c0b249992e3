package slipway.app.upkeep;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.access.Clinic;

/** Counts, clinic by clinic, the people whose time of keeping is over. It erases nobody: that is for a person to decide. */
final class Keeping {
    /** Key of the clinic's setting, in years. */
    private static final String SETTING = "retention.years";

    private static final int PAGE = 500;

    private final Records records;
    private final Clock clock;

    Keeping(Records records, Clock clock) {
        this.records = records;
        this.clock = clock;
    }

    /** Words on the clinics that have somebody to erase; empty if none has. */
    String run() {
        var words = new ArrayList<String>();
        for (Clinic clinic : records.clinics().list()) {
            String years = records.clinics().setting(clinic.id(), SETTING, "").value();
            if (years.matches("[1-9][0-9]{0,2}")) {
                Instant before = clock.instant()
                        .atZone(ZoneOffset.UTC)
                        .minusYears(Integer.parseInt(years))
                        .toInstant();
                long people = count(clinic.id(), before);
                if (people > 0) {
                    words.add("clinic %s: time of keeping is over for %d".formatted(clinic.id(), people));
                }
            }
        }
        return String.join("; ", words);
    }

    private long count(String clinicId, Instant before) {
        var act = new Act("retention", Role.PROGRAM, clinicId, clock.instant());
        long count = 0;
        String after = "";
        for (boolean more = true; more; ) {
            List<String> page = records.people().untouchedSince(before, after, PAGE, act);
            count += page.size();
            after = page.isEmpty() ? after : page.get(page.size() - 1);
            more = page.size() == PAGE;
        }
        return count;
    }
}
