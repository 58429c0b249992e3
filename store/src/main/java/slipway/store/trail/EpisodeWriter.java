package slipway.store.trail;

import java.time.Instant;
import java.util.Optional;
import java.util.function.Function;
import org.jooq.DSLContext;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.trail.Chain;
import slipway.store.db.Db;
import slipway.store.db.Ids;

/**
 * Reads and writes one episode in the name of one act.
 *
 * @param link what a patient came in for; empty for everybody else
 */
public record EpisodeWriter(
        Db db,
        TrailWriter trail,
        Ids ids,
        Act act,
        String episodeId,
        String personId,
        String clinicId,
        Optional<LinkPurpose> link) {

    public <T> T read(Function<DSLContext, T> query) {
        return db.read(query);
    }

    /** One transaction of a member of staff or of the program. */
    public <T> T write(Function<DSLContext, T> transaction) {
        if (act.role() == Role.PATIENT) {
            throw new IllegalStateException("a patient cannot write this");
        }
        return writeByAnybody(transaction);
    }

    /** One transaction of a member of staff, of the program, or of a patient who came in for this. */
    public <T> T writeAlsoFor(LinkPurpose purpose, Function<DSLContext, T> transaction) {
        return link.equals(Optional.of(purpose)) ? writeByAnybody(transaction) : write(transaction);
    }

    private <T> T writeByAnybody(Function<DSLContext, T> transaction) {
        return trail.write(Chain.ofPerson(personId), transaction);
    }

    /** Adds an entry to the trail of the person, within a transaction of this writer. */
    public void note(DSLContext tx, Note note) {
        trail.append(tx, Chain.ofPerson(personId), act, note);
    }

    /** A new id. */
    public String newId() {
        return ids.next(act.at());
    }

    public Instant now() {
        return act.at();
    }

    public String user() {
        return act.userId();
    }
}
