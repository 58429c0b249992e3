package slipway.store.chart;

import java.util.List;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.SelectConditionStep;
import slipway.care.record.chart.Episode;
import slipway.store.tables.EpisodeTable;
import slipway.store.tables.PersonTable;

/** Rows of episodes. */
final class EpisodeRows {
    private static final List<Field<?>> FIELDS = List.of(
            EpisodeTable.ID,
            EpisodeTable.PERSON_ID,
            EpisodeTable.CLINIC_ID,
            EpisodeTable.SIDE,
            EpisodeTable.THERAPIST_ID,
            EpisodeTable.STATE,
            EpisodeTable.OPENED_AT,
            EpisodeTable.CLOSED_AT,
            EpisodeTable.VERSION);

    private EpisodeRows() {}

    /** Episodes of people who were not erased. */
    static SelectConditionStep<Record> select(DSLContext query, Condition which) {
        return query.select(FIELDS)
                .from(EpisodeTable.EPISODE)
                .join(PersonTable.PERSON)
                .on(PersonTable.ID.eq(EpisodeTable.PERSON_ID))
                .where(PersonTable.ERASED_AT.isNull(), which);
    }

    static Episode episode(Record row) {
        return new Episode(
                row.get(EpisodeTable.ID),
                row.get(EpisodeTable.PERSON_ID),
                row.get(EpisodeTable.CLINIC_ID),
                row.get(EpisodeTable.SIDE),
                row.get(EpisodeTable.THERAPIST_ID),
                row.get(EpisodeTable.STATE),
                row.get(EpisodeTable.OPENED_AT),
                Optional.ofNullable(row.get(EpisodeTable.CLOSED_AT)),
                row.get(EpisodeTable.VERSION));
    }

    static Optional<Episode> find(DSLContext query, String episodeId) {
        return select(query, EpisodeTable.ID.eq(episodeId)).fetchOptional(EpisodeRows::episode);
    }
}
