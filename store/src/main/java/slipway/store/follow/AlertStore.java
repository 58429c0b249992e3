package slipway.store.follow;

import java.time.Instant;
import java.util.List;
import java.util.function.BiFunction;
import org.jooq.DSLContext;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.Saving;
import slipway.care.record.follow.Alert;
import slipway.care.record.follow.Alerts;
import slipway.care.record.trail.Chain;
import slipway.store.access.Scope;
import slipway.store.access.Scopes;
import slipway.store.db.Db;
import slipway.store.tables.AlertTable;
import slipway.store.tables.EpisodeTable;
import slipway.store.trail.Note;
import slipway.store.trail.TrailWriter;

/** The alerts of all episodes in the database. */
public final class AlertStore implements Alerts {
    private final Db db;
    private final TrailWriter trail;
    private final Scopes scopes;

    public AlertStore(Db db, TrailWriter trail, Scopes scopes) {
        this.db = db;
        this.trail = trail;
        this.scopes = scopes;
    }

    @Override
    public List<Alert> open(String clinicId) {
        return db.read(query -> AlertRows.select(query)
                .where(AlertTable.CLINIC_ID.eq(clinicId), AlertTable.ACKNOWLEDGED_AT.isNull())
                .orderBy(AlertTable.ALERT_LEVEL.desc(), AlertTable.RAISED_AT, AlertTable.ID)
                .fetch(AlertRows::alert));
    }

    @Override
    public List<Alert> standingSince(Instant before, int limit) {
        return db.read(query -> AlertRows.select(query)
                .where(AlertTable.LEVEL_AT.lt(before), AlertTable.ACKNOWLEDGED_AT.isNull())
                .orderBy(AlertTable.LEVEL_AT, AlertTable.ID)
                .limit(limit)
                .fetch(AlertRows::alert));
    }

    @Override
    public Saving<Alert> acknowledge(String alertId, String what, Act act) {
        return change(alertId, act, (tx, before) -> {
            if (before.acknowledged().isPresent()) {
                return false;
            }
            tx.update(AlertTable.ALERT)
                    .set(AlertTable.ACKNOWLEDGED_BY, act.userId())
                    .set(AlertTable.ACKNOWLEDGED_AT, act.at())
                    .set(AlertTable.ACKNOWLEDGED_WHAT, what)
                    .where(AlertTable.ID.eq(alertId))
                    .execute();
            return true;
        });
    }

    @Override
    public Saving<Alert> escalate(String alertId, int fromLevel, String ownerId, Act act) {
        return change(alertId, act, (tx, before) -> {
            if (before.acknowledged().isPresent() || before.level() != fromLevel) {
                return false;
            }
            tx.update(AlertTable.ALERT)
                    .set(AlertTable.ALERT_LEVEL, fromLevel + 1)
                    .set(AlertTable.LEVEL_AT, act.at())
                    .set(AlertTable.OWNER_ID, ownerId)
                    .where(AlertTable.ID.eq(alertId))
                    .execute();
            return true;
        });
    }

    private Saving<Alert> change(String alertId, Act act, BiFunction<DSLContext, Alert, Boolean> change) {
        Scope scope = scopes.of(act);
        String personId = db.read(query -> query.select(EpisodeTable.PERSON_ID)
                        .from(AlertTable.ALERT)
                        .join(EpisodeTable.EPISODE)
                        .on(EpisodeTable.ID.eq(AlertTable.EPISODE_ID))
                        .where(AlertTable.ID.eq(alertId), scope.episodes())
                        .fetchOptional(EpisodeTable.PERSON_ID))
                .orElseThrow(() -> new NotThere("alert", alertId));
        Chain chain = Chain.ofPerson(personId);
        return trail.write(chain, tx -> {
            Alert before = get(tx, alertId);
            if (!change.apply(tx, before)) {
                return new Saving.Stale<>(before);
            }
            Alert after = get(tx, alertId);
            trail.append(tx, chain, act, Note.changed("alert", alertId, 0, before, after));
            return new Saving.Saved<>(after);
        });
    }

    private static Alert get(DSLContext query, String alertId) {
        return AlertRows.select(query)
                .where(AlertTable.ID.eq(alertId))
                .fetchOptional(AlertRows::alert)
                .orElseThrow(() -> new NotThere("alert", alertId));
    }
}
