package slipway.web.episode;

import java.time.Clock;
import org.springframework.stereotype.Component;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Opening;
import slipway.web.shell.Pages;
import slipway.web.shell.StaffUser;

/** Opens charts for whoever is signed in. */
@Component
public class Desk {
    private final Records records;
    private final Clock clock;

    Desk(Records records, Clock clock) {
        this.records = records;
        this.clock = clock;
    }

    /** What whoever is signed in does now. */
    public Act act() {
        StaffUser user = Pages.staff();
        Role role = user.roles().stream().sorted().findFirst().orElseThrow();
        return new Act(user.accountId(), role, user.clinicId(), clock.instant());
    }

    /**
     * The open chart of an episode.
     *
     * @throws NotThere if there is no such episode in the clinic of whoever asks
     * @throws OutOfReach if there is, but not within reach; breaking the glass may help
     */
    public Chart open(String episodeId) {
        Opening opening = records.charts().open(episodeId, act());
        if (opening instanceof Opening.Refused refused) {
            if (refused.reason() == Opening.Reason.OUT_OF_REACH) {
                throw new OutOfReach(episodeId);
            }
            throw new NotThere("episode", episodeId);
        }
        return opening.chartIfOpen().orElseThrow();
    }

    public Records records() {
        return records;
    }

    public Clock clock() {
        return clock;
    }
}
