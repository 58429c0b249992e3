package slipway.store.chart;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jooq.DSLContext;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.Role;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Charts;
import slipway.care.record.chart.Episode;
import slipway.care.record.chart.EpisodeState;
import slipway.care.record.chart.Opening;
import slipway.care.record.content.Section;
import slipway.care.record.person.Person;
import slipway.mechanics.body.Side;
import slipway.store.access.Scope;
import slipway.store.access.Scopes;
import slipway.store.db.Db;
import slipway.store.db.Ids;
import slipway.store.person.PersonRows;
import slipway.store.tables.EpisodeTable;
import slipway.store.trail.EpisodeWriter;
import slipway.store.trail.Note;
import slipway.store.trail.TrailWriter;
import tools.jackson.databind.node.ObjectNode;

/** Opens charts. */
public final class ChartsStore implements Charts {
    private final Db db;
    private final TrailWriter trail;
    private final Ids ids;
    private final Scopes scopes;

    public ChartsStore(Db db, TrailWriter trail, Ids ids, Scopes scopes) {
        this.db = db;
        this.trail = trail;
        this.ids = ids;
        this.scopes = scopes;
    }

    @Override
    public Opening open(String episodeId, Act act) {
        Scope scope = scopes.of(act);
        Optional<Episode> seen = db.read(query -> EpisodeRows.select(query, EpisodeTable.ID.eq(episodeId))
                .and(scope.episodes())
                .fetchOptional(EpisodeRows::episode));
        if (seen.isEmpty()) {
            return new Opening.Refused(reason(episodeId, scope, act));
        }
        trail.noteReading(seen.get().personId(), "episode", episodeId, act);
        return new Opening.Opened(new ChartStore(writer(seen.get(), scope, act)));
    }

    private Opening.Reason reason(String episodeId, Scope scope, Act act) {
        if (scope instanceof Scope.Nothing || act.role() == Role.PATIENT) {
            return Opening.Reason.ROLE;
        }
        boolean inClinic = db.read(query -> EpisodeRows.find(query, episodeId))
                .filter(episode -> episode.clinicId().equals(act.clinicId()))
                .isPresent();
        return inClinic ? Opening.Reason.OUT_OF_REACH : Opening.Reason.UNKNOWN;
    }

    private EpisodeWriter writer(Episode episode, Scope scope, Act act) {
        return new EpisodeWriter(
                db, trail, ids, act, episode.id(), episode.personId(), episode.clinicId(), scope.link());
    }

    @Override
    public Chart begin(String personId, Side side, String therapistId, Map<Section, ObjectNode> content, Act act) {
        Scope scope = scopes.of(act);
        Person person = db.read(query -> PersonRows.find(query, personId, scope.people()))
                .orElseThrow(() -> new NotThere("person", personId));
        var episode = new Episode(
                ids.next(act.at()),
                personId,
                person.clinicId(),
                side,
                therapistId,
                EpisodeState.OPEN,
                act.at(),
                Optional.empty(),
                1);
        EpisodeWriter writer = writer(episode, scope, act);
        writer.write(tx -> {
            insert(tx, episode, act);
            writer.note(tx, Note.created("episode", episode.id(), 1, episode));
            content.forEach((section, given) -> Sections.insertFirst(tx, writer, section, given));
            return episode;
        });
        return new ChartStore(writer);
    }

    private static void insert(DSLContext tx, Episode episode, Act act) {
        tx.insertInto(EpisodeTable.EPISODE)
                .set(EpisodeTable.ID, episode.id())
                .set(EpisodeTable.PERSON_ID, episode.personId())
                .set(EpisodeTable.CLINIC_ID, episode.clinicId())
                .set(EpisodeTable.SIDE, episode.side())
                .set(EpisodeTable.THERAPIST_ID, episode.therapistId())
                .set(EpisodeTable.STATE, episode.state())
                .set(EpisodeTable.OPENED_AT, episode.openedAt())
                .set(EpisodeTable.OPENED_BY, act.userId())
                .set(EpisodeTable.VERSION, episode.version())
                .execute();
    }

    @Override
    public List<Episode> ofPerson(String personId, Act act) {
        Scope scope = scopes.of(act);
        List<Episode> episodes = db.read(query -> EpisodeRows.select(query, EpisodeTable.PERSON_ID.eq(personId))
                .and(scope.episodes())
                .orderBy(EpisodeTable.OPENED_AT.desc(), EpisodeTable.ID.desc())
                .fetch(EpisodeRows::episode));
        if (!episodes.isEmpty()) {
            trail.noteReading(personId, "person", personId, act);
        }
        return episodes;
    }
}
