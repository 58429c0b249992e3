package slipway.store.access;

import java.time.Instant;
import java.util.List;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.access.Grant;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.store.db.Db;
import slipway.store.db.Ids;
import slipway.store.tables.EpisodeTable;
import slipway.store.tables.GlassGrantTable;
import slipway.store.tables.PersonTable;
import slipway.store.trail.Note;
import slipway.store.trail.TrailWriter;

/** Broken glass. */
final class Grants {
    private final Db db;
    private final TrailWriter trail;
    private final Ids ids;

    Grants(Db db, TrailWriter trail, Ids ids) {
        this.db = db;
        this.trail = trail;
        this.ids = ids;
    }

    Grant add(String personId, String reason, Instant until, Act act) {
        if (reason.isBlank() || !until.isAfter(act.at())) {
            throw new IllegalArgumentException("breaking the glass needs a reason and an end in the future");
        }
        var grant = new Grant(ids.next(act.at()), act.userId(), personId, reason, act.at(), until);
        Chain chain = Chain.ofPerson(personId);
        // Looked up first, so that an unknown id does not begin a chain.
        boolean known = db.read(query -> query.fetchExists(query.selectOne()
                .from(PersonTable.PERSON)
                .where(
                        PersonTable.ID.eq(personId),
                        PersonTable.CLINIC_ID.eq(act.clinicId()),
                        PersonTable.ERASED_AT.isNull())));
        if (!known) {
            throw new NotThere("person", personId);
        }
        return trail.write(chain, tx -> {
            tx.insertInto(GlassGrantTable.GLASS_GRANT)
                    .set(GlassGrantTable.ID, grant.id())
                    .set(GlassGrantTable.CLINIC_ID, act.clinicId())
                    .set(GlassGrantTable.STAFF_ID, grant.staffId())
                    .set(GlassGrantTable.PERSON_ID, personId)
                    .set(GlassGrantTable.REASON, reason)
                    .set(GlassGrantTable.AT, grant.at())
                    .set(GlassGrantTable.UNTIL, until)
                    .execute();
            trail.append(
                    tx, chain, act, Note.created("grant", grant.id(), 0, grant).as(Action.BREAK_GLASS));
            return grant;
        });
    }

    Grant addForEpisode(String episodeId, String reason, Instant until, Act act) {
        String personId = db.read(query -> query.select(EpisodeTable.PERSON_ID)
                        .from(EpisodeTable.EPISODE)
                        .where(EpisodeTable.ID.eq(episodeId), EpisodeTable.CLINIC_ID.eq(act.clinicId()))
                        .fetchOptional(EpisodeTable.PERSON_ID))
                .orElseThrow(() -> new NotThere("episode", episodeId));
        return add(personId, reason, until, act);
    }

    List<Grant> list(String clinicId, Instant since) {
        return db.read(query -> query.select(
                        GlassGrantTable.ID,
                        GlassGrantTable.STAFF_ID,
                        GlassGrantTable.PERSON_ID,
                        GlassGrantTable.REASON,
                        GlassGrantTable.AT,
                        GlassGrantTable.UNTIL)
                .from(GlassGrantTable.GLASS_GRANT)
                .where(GlassGrantTable.CLINIC_ID.eq(clinicId), GlassGrantTable.AT.ge(since))
                .orderBy(GlassGrantTable.AT.desc(), GlassGrantTable.ID.desc())
                .fetch(org.jooq.Records.mapping(Grant::new)));
    }
}
