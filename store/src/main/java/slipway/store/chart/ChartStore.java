package slipway.store.chart;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.jooq.impl.DSL;
import slipway.care.record.NotThere;
import slipway.care.record.Saving;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Decisions;
import slipway.care.record.chart.Episode;
import slipway.care.record.chart.EpisodeState;
import slipway.care.record.chart.Plans;
import slipway.care.record.chart.Results;
import slipway.care.record.chart.TakeOver;
import slipway.care.record.chart.Visits;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionRecord;
import slipway.care.record.follow.CheckIns;
import slipway.care.record.follow.Goals;
import slipway.care.record.follow.Measures;
import slipway.care.record.intake.Intakes;
import slipway.care.record.papers.Documents;
import slipway.care.record.papers.Papers;
import slipway.care.record.person.Person;
import slipway.mechanics.body.Side;
import slipway.store.follow.CheckInStore;
import slipway.store.follow.GoalStore;
import slipway.store.follow.IntakeStore;
import slipway.store.follow.MeasureStore;
import slipway.store.papers.DocumentStore;
import slipway.store.papers.PaperStore;
import slipway.store.person.PersonRows;
import slipway.store.tables.EpisodeTable;
import slipway.store.trail.EpisodeWriter;
import slipway.store.trail.Note;
import tools.jackson.databind.node.ObjectNode;

/** An open chart. */
final class ChartStore implements Chart {
    private final EpisodeWriter writer;
    private final Sections sections;

    ChartStore(EpisodeWriter writer) {
        this.writer = writer;
        this.sections = new Sections(writer);
    }

    @Override
    public Person person() {
        return writer.read(query -> PersonRows.find(query, writer.personId(), DSL.trueCondition()))
                .orElseThrow(() -> new NotThere("person", writer.personId()));
    }

    @Override
    public Episode episode() {
        return writer.read(query -> EpisodeRows.find(query, writer.episodeId()))
                .orElseThrow(() -> new NotThere("episode", writer.episodeId()));
    }

    @Override
    public Map<Section, SectionRecord> sections() {
        return sections.newest(episode());
    }

    @Override
    public SectionRecord section(Section section) {
        return sections.newest(section, episode());
    }

    @Override
    public Optional<SectionRecord> earlier(Section section, long version) {
        return sections.find(section, version);
    }

    @Override
    public Saving<SectionRecord> save(Section section, long version, ObjectNode content) {
        return sections.save(section, version, content);
    }

    @Override
    public Saving<Map<Section, SectionRecord>> saveAll(Map<Section, Long> versions, Map<Section, ObjectNode> contents) {
        return sections.saveAll(versions, contents, episode());
    }

    @Override
    public Saving<Person> takeOver(TakeOver what) {
        return new TakingOver(writer, sections).run(what);
    }

    @Override
    public Saving<Episode> change(long version, Side side, String therapistId, EpisodeState state) {
        return writer.write(tx -> {
            Episode before = EpisodeRows.find(tx, writer.episodeId())
                    .orElseThrow(() -> new NotThere("episode", writer.episodeId()));
            if (before.version() != version) {
                return new Saving.Stale<>(before);
            }
            Optional<Instant> closedAt = state == EpisodeState.CLOSED
                    ? Optional.of(before.closedAt().orElse(writer.now()))
                    : Optional.empty();
            tx.update(EpisodeTable.EPISODE)
                    .set(EpisodeTable.SIDE, side)
                    .set(EpisodeTable.THERAPIST_ID, therapistId)
                    .set(EpisodeTable.STATE, state)
                    .set(EpisodeTable.CLOSED_AT, closedAt.orElse(null))
                    .set(EpisodeTable.VERSION, version + 1)
                    .where(EpisodeTable.ID.eq(before.id()))
                    .execute();
            Episode after = EpisodeRows.find(tx, before.id()).orElseThrow();
            writer.note(tx, Note.changed("episode", before.id(), after.version(), before, after));
            return new Saving.Saved<>(after);
        });
    }

    @Override
    public Visits visits() {
        return new VisitStore(writer);
    }

    @Override
    public Results results() {
        return new ResultStore(writer);
    }

    @Override
    public Plans plans() {
        return new PlanStore(writer);
    }

    @Override
    public Decisions decisions() {
        return new DecisionStore(writer);
    }

    @Override
    public Documents documents() {
        return new DocumentStore(writer);
    }

    @Override
    public Papers papers() {
        return new PaperStore(writer);
    }

    @Override
    public Intakes intakes() {
        return new IntakeStore(writer);
    }

    @Override
    public CheckIns checkIns() {
        return new CheckInStore(writer);
    }

    @Override
    public Measures measures() {
        return new MeasureStore(writer);
    }

    @Override
    public Goals goals() {
        return new GoalStore(writer);
    }

    @Override
    public Instant openedAt() {
        return writer.now();
    }
}
