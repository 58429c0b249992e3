package slipway.store.draft;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Records;
import org.jooq.impl.DSL;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.draft.Draft;
import slipway.care.record.draft.Drafts;
import slipway.store.access.Scope;
import slipway.store.access.Scopes;
import slipway.store.db.Db;
import slipway.store.tables.DraftTable;
import slipway.store.tables.EpisodeTable;
import slipway.store.tables.PersonTable;

/** Drafts in the database. */
public final class DraftStore implements Drafts {
    private final Db db;
    private final Scopes scopes;

    public DraftStore(Db db, Scopes scopes) {
        this.db = db;
        this.scopes = scopes;
    }

    @Override
    public Draft save(String episodeId, String form, long baseVersion, String content, Act act) {
        var draft = new Draft(act.userId(), episodeId, form, baseVersion, content, act.at());
        Scope scope = scopes.of(act);
        return db.write(tx -> {
            if (!sees(tx, scope, episodeId)) {
                throw new NotThere("episode", episodeId);
            }
            tx.insertInto(DraftTable.DRAFT)
                    .set(DraftTable.USER_ID, draft.userId())
                    .set(DraftTable.EPISODE_ID, episodeId)
                    .set(DraftTable.FORM, form)
                    .set(DraftTable.BASE_VERSION, baseVersion)
                    .set(DraftTable.CONTENT, content)
                    .set(DraftTable.AT, draft.at())
                    .onConflict(DraftTable.USER_ID, DraftTable.EPISODE_ID, DraftTable.FORM)
                    .doUpdate()
                    .set(DraftTable.BASE_VERSION, baseVersion)
                    .set(DraftTable.CONTENT, content)
                    .set(DraftTable.AT, draft.at())
                    .execute();
            return draft;
        });
    }

    private static boolean sees(DSLContext query, Scope scope, String episodeId) {
        return query.fetchExists(query.selectOne()
                .from(EpisodeTable.EPISODE)
                .join(PersonTable.PERSON)
                .on(PersonTable.ID.eq(EpisodeTable.PERSON_ID))
                .where(EpisodeTable.ID.eq(episodeId), PersonTable.ERASED_AT.isNull(), scope.episodes()));
    }

    @Override
    public Optional<Draft> find(String episodeId, String form, Act act) {
        return drafts(episodeId, DraftTable.FORM.eq(form), act).stream().findFirst();
    }

    @Override
    public List<Draft> list(String episodeId, Act act) {
        return drafts(episodeId, DSL.trueCondition(), act);
    }

    private List<Draft> drafts(String episodeId, Condition which, Act act) {
        Scope scope = scopes.of(act);
        return db.read(query -> !sees(query, scope, episodeId)
                ? List.of()
                : query.select(
                                DraftTable.USER_ID,
                                DraftTable.EPISODE_ID,
                                DraftTable.FORM,
                                DraftTable.BASE_VERSION,
                                DraftTable.CONTENT,
                                DraftTable.AT)
                        .from(DraftTable.DRAFT)
                        .where(DraftTable.USER_ID.eq(act.userId()), DraftTable.EPISODE_ID.eq(episodeId), which)
                        .orderBy(DraftTable.AT.desc(), DraftTable.FORM)
                        .fetch(Records.mapping(Draft::new)));
    }

    @Override
    public void drop(String episodeId, String form, Act act) {
        db.write(tx -> drop(tx, act.userId(), episodeId, form));
    }

    /** Drops a draft within a transaction; gives how many there were. */
    public static int drop(DSLContext tx, String userId, String episodeId, String form) {
        return tx.deleteFrom(DraftTable.DRAFT)
                .where(DraftTable.USER_ID.eq(userId), DraftTable.EPISODE_ID.eq(episodeId), DraftTable.FORM.eq(form))
                .execute();
    }

    @Override
    public int purge(Instant before) {
        return db.write(tx ->
                tx.deleteFrom(DraftTable.DRAFT).where(DraftTable.AT.lt(before)).execute());
    }
}
