package slipway.store.chart;

import java.util.List;
import org.jooq.DSLContext;
import org.jooq.impl.DSL;
import slipway.care.record.NotThere;
import slipway.care.record.SameJson;
import slipway.care.record.Saving;
import slipway.care.record.chart.Episode;
import slipway.care.record.chart.TakeOver;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionRecord;
import slipway.care.record.person.Person;
import slipway.care.record.trail.Action;
import slipway.store.follow.MeasureStore;
import slipway.store.person.PersonRows;
import slipway.store.trail.EpisodeWriter;
import slipway.store.trail.Note;

/** Writes what comes from another system into an episode: person, paperwork, scores. */
final class TakingOver {
    private final EpisodeWriter writer;
    private final Sections sections;
    private final MeasureStore measures;

    TakingOver(EpisodeWriter writer, Sections sections) {
        this.writer = writer;
        this.sections = sections;
        this.measures = new MeasureStore(writer);
    }

    Saving<Person> run(TakeOver what) {
        SectionRecord.checked(Section.PAPERWORK, what.paperwork());
        return writer.write(tx -> {
            Person person = person(tx);
            Episode episode = EpisodeRows.find(tx, writer.episodeId()).orElseThrow();
            SectionRecord paperwork = Sections.newest(tx, writer, Section.PAPERWORK, episode);
            List<String> taken = measures.idsIn(tx);
            if (person.version() != what.personVersion()
                    || paperwork.version() != what.paperworkVersion()
                    || !taken.equals(what.measureIds())) {
                return new Saving.Stale<>(person);
            }
            if (!person.details().equals(what.person())) {
                writer.note(tx, PersonRows.change(tx, person, what.person()));
            }
            if (!SameJson.same(paperwork.content(), what.paperwork())) {
                sections.saveIn(tx, Section.PAPERWORK, paperwork.version(), what.paperwork());
            }
            what.scores().forEach(score -> measures.addIn(tx, score.measureId(), score.day(), score.body()));
            writer.note(tx, Note.plain(Action.IMPORT, "fhir", writer.episodeId()));
            return new Saving.Saved<>(person(tx));
        });
    }

    private Person person(DSLContext tx) {
        return PersonRows.find(tx, writer.personId(), DSL.trueCondition())
                .orElseThrow(() -> new NotThere("person", writer.personId()));
    }
}
