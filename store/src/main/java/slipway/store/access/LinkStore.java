package slipway.store.access;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jooq.DSLContext;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.access.AccessLink;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.access.Links;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.store.db.Db;
import slipway.store.db.Ids;
import slipway.store.tables.AccessLinkTable;
import slipway.store.tables.EpisodeTable;
import slipway.store.trail.Note;
import slipway.store.trail.TrailWriter;

/** Access links in the database. Their trail is that of the person. */
public final class LinkStore implements Links {
    private final Db db;
    private final TrailWriter trail;
    private final Ids ids;
    private final Scopes scopes;

    public LinkStore(Db db, TrailWriter trail, Ids ids, Scopes scopes) {
        this.db = db;
        this.trail = trail;
        this.ids = ids;
        this.scopes = scopes;
    }

    @Override
    public AccessLink add(
            String episodeId,
            LinkPurpose purpose,
            OptionalInt planVersion,
            String tokenSha256,
            Instant expiresAt,
            boolean birthYearAsked,
            Act act) {
        String personId = visiblePerson(episodeId, act).orElseThrow(() -> new NotThere("episode", episodeId));
        var link = new AccessLink(
                ids.next(act.at()),
                episodeId,
                purpose,
                planVersion,
                tokenSha256,
                act.at(),
                expiresAt,
                Optional.empty(),
                birthYearAsked,
                0,
                Optional.empty());
        Chain chain = Chain.ofPerson(personId);
        return trail.write(chain, tx -> {
            tx.insertInto(AccessLinkTable.ACCESS_LINK)
                    .set(AccessLinkTable.ID, link.id())
                    .set(AccessLinkTable.EPISODE_ID, episodeId)
                    .set(AccessLinkTable.PURPOSE, purpose)
                    .set(AccessLinkTable.PLAN_NUMBER, planVersion.isPresent() ? (Integer) planVersion.getAsInt() : null)
                    .set(AccessLinkTable.TOKEN_SHA256, tokenSha256)
                    .set(AccessLinkTable.CREATED_AT, act.at())
                    .set(AccessLinkTable.EXPIRES_AT, expiresAt)
                    .set(AccessLinkTable.BIRTH_YEAR_ASKED, birthYearAsked)
                    .set(AccessLinkTable.FAILURES, 0)
                    .execute();
            trail.append(tx, chain, act, Note.plain(Action.CREATE, "link", link.id()));
            return link;
        });
    }

    private Optional<String> visiblePerson(String episodeId, Act act) {
        Scope scope = scopes.of(act);
        return act.role() == slipway.care.record.Role.PATIENT
                ? Optional.empty()
                : db.read(query -> query.select(EpisodeTable.PERSON_ID)
                        .from(EpisodeTable.EPISODE)
                        .where(EpisodeTable.ID.eq(episodeId), scope.episodes())
                        .fetchOptional(EpisodeTable.PERSON_ID));
    }

    @Override
    public Optional<AccessLink> find(String tokenSha256) {
        return db.read(query -> AccessLinks.find(query, AccessLinkTable.TOKEN_SHA256.eq(tokenSha256)));
    }

    @Override
    public Optional<AccessLink> findById(String linkId) {
        return db.read(query -> AccessLinks.find(query, AccessLinkTable.ID.eq(linkId)));
    }

    @Override
    public List<AccessLink> list(String episodeId, Act act) {
        return visiblePerson(episodeId, act).isEmpty()
                ? List.of()
                : db.read(query -> AccessLinks.select(query)
                        .where(AccessLinkTable.EPISODE_ID.eq(episodeId))
                        .orderBy(AccessLinkTable.CREATED_AT.desc(), AccessLinkTable.ID.desc())
                        .fetch(AccessLinks::link));
    }

    @Override
    public AccessLink failed(String linkId, Optional<Instant> lockedUntil, Act act) {
        return change(
                linkId,
                act,
                Action.LINK_FAILED,
                tx -> tx.update(AccessLinkTable.ACCESS_LINK)
                        .set(AccessLinkTable.FAILURES, AccessLinkTable.FAILURES.plus(1))
                        .set(AccessLinkTable.LOCKED_UNTIL, lockedUntil.orElse(null))
                        .where(AccessLinkTable.ID.eq(linkId))
                        .execute());
    }

    @Override
    public void used(String linkId, Act act) {
        change(
                linkId,
                act,
                Action.LINK_USED,
                tx -> tx.update(AccessLinkTable.ACCESS_LINK)
                        .set(AccessLinkTable.FAILURES, 0)
                        .setNull(AccessLinkTable.LOCKED_UNTIL)
                        .where(AccessLinkTable.ID.eq(linkId))
                        .execute());
    }

    @Override
    public void revoke(String linkId, Act act) {
        if (findById(linkId)
                .flatMap(link -> visiblePerson(link.episodeId(), act))
                .isEmpty()) {
            throw new NotThere("link", linkId);
        }
        change(
                linkId,
                act,
                Action.LINK_REVOKED,
                tx -> tx.update(AccessLinkTable.ACCESS_LINK)
                        .set(AccessLinkTable.REVOKED_AT, act.at())
                        .where(AccessLinkTable.ID.eq(linkId), AccessLinkTable.REVOKED_AT.isNull())
                        .execute());
    }

    private interface Change {
        int in(DSLContext tx);
    }

    private AccessLink change(String linkId, Act act, Action action, Change change) {
        String personId = db.read(query -> query.select(EpisodeTable.PERSON_ID)
                        .from(AccessLinkTable.ACCESS_LINK)
                        .join(EpisodeTable.EPISODE)
                        .on(EpisodeTable.ID.eq(AccessLinkTable.EPISODE_ID))
                        .where(AccessLinkTable.ID.eq(linkId))
                        .fetchOptional(EpisodeTable.PERSON_ID))
                .orElseThrow(() -> new NotThere("link", linkId));
        Chain chain = Chain.ofPerson(personId);
        return trail.write(chain, tx -> {
            change.in(tx);
            trail.append(tx, chain, act, Note.plain(action, "link", linkId));
            return AccessLinks.find(tx, AccessLinkTable.ID.eq(linkId)).orElseThrow();
        });
    }
}
