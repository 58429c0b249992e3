package slipway.web.api;

import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.chart.Chart;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.web.shell.ApiUser;

/** Opens charts for the program that asks, in the name of the account of its token. */
@Component
class ApiDesk {
    private final Records records;
    private final Clock clock;

    ApiDesk(Records records, Clock clock) {
        this.records = records;
        this.clock = clock;
    }

    /** Who asks. */
    ApiUser user() {
        @Nullable Authentication held = SecurityContextHolder.getContext().getAuthentication();
        if (held != null && held.getPrincipal() instanceof ApiUser user) {
            return user;
        }
        throw new IllegalStateException("no token was shown; the routes let nobody through without");
    }

    /** What the program does now; the trail names its token. */
    Act act() {
        ApiUser user = user();
        Role role = user.staff().roles().stream().sorted().findFirst().orElseThrow();
        return new Act(
                user.staff().accountId(),
                role,
                user.staff().clinicId(),
                clock.instant(),
                user.token().id());
    }

    /**
     * The open chart of an episode.
     *
     * @throws NotThere if there is no such episode within the reach of the account; which of the two is not said
     */
    Chart open(String episodeId) {
        return records.charts()
                .open(episodeId, act())
                .chartIfOpen()
                .orElseThrow(() -> new NotThere("episode within the reach of this token:", episodeId));
    }

    /** Notes that something of a person left the records. */
    void noteExport(Chart chart, String entity, String entityId) {
        records.trail().note(Chain.ofPerson(chart.person().id()), Action.EXPORT, entity, entityId, act());
    }

    Records records() {
        return records;
    }
}
