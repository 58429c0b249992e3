package slipway.store.caseload;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record1;
import org.jooq.Select;
import org.jooq.impl.DSL;
import slipway.care.record.Act;
import slipway.care.record.caseload.Caseload;
import slipway.care.record.caseload.KeptFigures;
import slipway.care.record.caseload.OutcomeAsk;
import slipway.care.record.caseload.OutcomeRow;
import slipway.care.record.caseload.PaperTrailRow;
import slipway.care.record.caseload.PersonRow;
import slipway.care.record.caseload.TodayRow;
import slipway.store.access.Scope;
import slipway.store.access.Scopes;
import slipway.store.db.Db;
import slipway.store.tables.AlertTable;
import slipway.store.tables.CaseloadFiguresTable;
import slipway.store.tables.EpisodeTable;

/** Lists over many people. */
public final class CaseloadStore implements Caseload {
    private static final int MOST_ROWS = 500;

    private final Db db;
    private final Scopes scopes;

    public CaseloadStore(Db db, Scopes scopes) {
        this.db = db;
        this.scopes = scopes;
    }

    @Override
    public List<TodayRow> today(String therapistId, int limit, Act act) {
        Scope scope = scopes.of(act);
        Condition which = EpisodeTable.THERAPIST_ID
                .eq(therapistId)
                .and(EpisodeTable.CLINIC_ID.eq(act.clinicId()))
                .and(scope.episodes());
        return db.read(query -> TodayQuery.rows(query, which, checked(limit)));
    }

    @Override
    public List<TodayRow> today(int limit, Act act) {
        Scope scope = scopes.of(act);
        Condition seen = EpisodeTable.CLINIC_ID.eq(act.clinicId()).and(scope.episodes());
        return db.read(query -> TodayQuery.rows(
                query,
                EpisodeTable.ID.in(waiting(query, act.clinicId(), seen, limit).union(newest(query, seen, limit))),
                checked(limit)));
    }

    /** Episodes with open alerts, the longest waiting first. */
    private static Select<Record1<String>> waiting(DSLContext query, String clinicId, Condition seen, int limit) {
        return query.select(DSL.field(DSL.name("waiting", "id"), String.class))
                .from(query.select(AlertTable.EPISODE_ID.as("id"))
                        .from(AlertTable.ALERT)
                        .join(EpisodeTable.EPISODE)
                        .on(EpisodeTable.ID.eq(AlertTable.EPISODE_ID))
                        .where(AlertTable.CLINIC_ID.eq(clinicId), AlertTable.ACKNOWLEDGED_AT.isNull(), seen)
                        .orderBy(AlertTable.RAISED_AT)
                        .limit(limit)
                        .asTable("waiting"));
    }

    /** Open episodes, the newest first. */
    private static Select<Record1<String>> newest(DSLContext query, Condition seen, int limit) {
        return query.select(DSL.field(DSL.name("newest", "id"), String.class))
                .from(query.select(EpisodeTable.ID.as("id"))
                        .from(EpisodeTable.EPISODE)
                        .where(seen, TodayQuery.IS_OPEN)
                        .orderBy(EpisodeTable.OPENED_AT.desc())
                        .limit(limit)
                        .asTable("newest"));
    }

    @Override
    public List<PersonRow> people(String text, String afterKey, int limit, Act act) {
        Scope scope = scopes.of(act);
        return db.read(
                query -> PeopleQuery.rows(query, act.clinicId(), text, afterKey, checked(limit), scope.people()));
    }

    @Override
    public List<PaperTrailRow> paperTrails(Collection<String> episodeIds, Act act) {
        if (episodeIds.isEmpty()) {
            return List.of();
        }
        checked(episodeIds.size());
        Condition seen = EpisodeTable.ID
                .in(episodeIds)
                .and(EpisodeTable.CLINIC_ID.eq(act.clinicId()))
                .and(scopes.of(act).episodes());
        return db.read(query -> PaperTrailQuery.rows(query, seen));
    }

    @Override
    public List<OutcomeRow> outcomes(OutcomeAsk ask, Act act) {
        Condition seen =
                EpisodeTable.CLINIC_ID.eq(act.clinicId()).and(scopes.of(act).episodes());
        return db.read(query -> OutcomeQuery.of(query, seen, ask).rows());
    }

    @Override
    public Optional<KeptFigures> figures(Act act) {
        return scopes.of(act).seesAllOf(act.clinicId())
                ? db.read(query -> query.select(CaseloadFiguresTable.AT, CaseloadFiguresTable.BODY)
                        .from(CaseloadFiguresTable.CASELOAD_FIGURES)
                        .where(CaseloadFiguresTable.CLINIC_ID.eq(act.clinicId()))
                        .fetchOptional(row -> new KeptFigures(row.value1(), row.value2())))
                : Optional.empty();
    }

    @Override
    public void keep(KeptFigures figures, Act act) {
        if (!scopes.of(act).seesAllOf(act.clinicId())) {
            throw new IllegalArgumentException("figures of a clinic are kept by who sees all of it");
        }
        db.write(tx -> tx.insertInto(CaseloadFiguresTable.CASELOAD_FIGURES)
                .set(CaseloadFiguresTable.CLINIC_ID, act.clinicId())
                .set(CaseloadFiguresTable.AT, figures.at())
                .set(CaseloadFiguresTable.BODY, figures.body())
                .onConflict(CaseloadFiguresTable.CLINIC_ID)
                .doUpdate()
                .set(CaseloadFiguresTable.AT, figures.at())
                .set(CaseloadFiguresTable.BODY, figures.body())
                .execute());
    }

    private static int checked(int limit) {
        if (limit < 1 || limit > MOST_ROWS) {
            throw new IllegalArgumentException("limit must be within 1 and %d, was %d".formatted(MOST_ROWS, limit));
        }
        return limit;
    }
}
