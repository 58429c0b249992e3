package slipway.store.follow;

import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.SelectJoinStep;
import slipway.care.record.follow.Alert;
import slipway.store.tables.AlertTable;

/** Rows of alerts. */
final class AlertRows {
    private AlertRows() {}

    static SelectJoinStep<Record> select(DSLContext query) {
        return query.select(List.of(
                        AlertTable.ID,
                        AlertTable.EPISODE_ID,
                        AlertTable.KIND,
                        AlertTable.WORDS,
                        AlertTable.CHECK_IN_ID,
                        AlertTable.OWNER_ID,
                        AlertTable.RAISED_AT,
                        AlertTable.ALERT_LEVEL,
                        AlertTable.LEVEL_AT,
                        AlertTable.ACKNOWLEDGED_BY,
                        AlertTable.ACKNOWLEDGED_AT,
                        AlertTable.ACKNOWLEDGED_WHAT))
                .from(AlertTable.ALERT);
    }

    static Alert alert(Record row) {
        Optional<Alert.Acknowledged> taken = Optional.ofNullable(row.get(AlertTable.ACKNOWLEDGED_BY))
                .map(by -> new Alert.Acknowledged(
                        by, row.get(AlertTable.ACKNOWLEDGED_AT), row.get(AlertTable.ACKNOWLEDGED_WHAT)));
        return new Alert(
                row.get(AlertTable.ID),
                row.get(AlertTable.EPISODE_ID),
                row.get(AlertTable.KIND),
                row.get(AlertTable.WORDS),
                Optional.ofNullable(row.get(AlertTable.CHECK_IN_ID)),
                row.get(AlertTable.OWNER_ID),
                row.get(AlertTable.RAISED_AT),
                row.get(AlertTable.ALERT_LEVEL),
                row.get(AlertTable.LEVEL_AT),
                taken);
    }

    static void insert(DSLContext tx, Alert alert, String clinicId) {
        tx.insertInto(AlertTable.ALERT)
                .set(AlertTable.ID, alert.id())
                .set(AlertTable.EPISODE_ID, alert.episodeId())
                .set(AlertTable.CLINIC_ID, clinicId)
                .set(AlertTable.KIND, alert.kind())
                .set(AlertTable.WORDS, alert.words())
                .set(AlertTable.CHECK_IN_ID, alert.checkInId().orElse(null))
                .set(AlertTable.OWNER_ID, alert.ownerId())
                .set(AlertTable.RAISED_AT, alert.raisedAt())
                .set(AlertTable.ALERT_LEVEL, alert.level())
                .set(AlertTable.LEVEL_AT, alert.levelAt())
                .execute();
    }
}
