package slipway.store.chart;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.SelectConditionStep;
import org.jooq.impl.DSL;
import slipway.care.record.Saving;
import slipway.care.record.chart.Episode;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionRecord;
import slipway.store.draft.DraftStore;
import slipway.store.tables.SectionVersionTable;
import slipway.store.trail.EpisodeWriter;
import slipway.store.trail.Note;
import tools.jackson.databind.node.ObjectNode;

/** The sections of one episode. Every version stays; the newest counts. */
final class Sections {
    private final EpisodeWriter writer;

    Sections(EpisodeWriter writer) {
        this.writer = writer;
    }

    Map<Section, SectionRecord> newest(Episode episode) {
        var all = new EnumMap<Section, SectionRecord>(Section.class);
        writer.read(query -> select(query, SectionVersionTable.EPISODE_ID.eq(writer.episodeId()))
                        .and(DSL.row(SectionVersionTable.SECTION, SectionVersionTable.VERSION)
                                .in(query.select(SectionVersionTable.SECTION, DSL.max(SectionVersionTable.VERSION))
                                        .from(SectionVersionTable.SECTION_VERSION)
                                        .where(SectionVersionTable.EPISODE_ID.eq(writer.episodeId()))
                                        .groupBy(SectionVersionTable.SECTION)))
                        .fetch(Sections::section))
                .forEach(section -> all.put(section.section(), section));
        for (Section section : Section.values()) {
            all.computeIfAbsent(
                    section, none -> SectionRecord.unwritten(none, episode.openedAt(), episode.therapistId()));
        }
        return all;
    }

    Optional<SectionRecord> find(Section section, long version) {
        return writer.read(query -> select(query, of(writer, section))
                .and(SectionVersionTable.VERSION.eq(version))
                .fetchOptional(Sections::section));
    }

    SectionRecord newest(Section section, Episode episode) {
        return writer.read(query -> newest(query, writer, section, episode));
    }

    static SectionRecord newest(DSLContext query, EpisodeWriter writer, Section section, Episode episode) {
        return select(query, of(writer, section))
                .orderBy(SectionVersionTable.VERSION.desc())
                .limit(1)
                .fetchOptional(Sections::section)
                .orElseGet(() -> SectionRecord.unwritten(section, episode.openedAt(), episode.therapistId()));
    }

    Saving<SectionRecord> save(Section section, long version, ObjectNode content) {
        ObjectNode checked = SectionRecord.checked(section, content);
        return writer.write(tx -> save(tx, section, version, checked));
    }

    /** All or none: the versions of all sections that were read are looked at before the first is written. */
    Saving<Map<Section, SectionRecord>> saveAll(
            Map<Section, Long> versions, Map<Section, ObjectNode> contents, Episode episode) {
        contents.forEach(SectionRecord::checked);
        boolean fresh = writer.write(tx -> {
            boolean same = versions.entrySet().stream()
                    .allMatch(read -> newest(tx, writer, read.getKey(), episode).version() == read.getValue());
            if (same) {
                contents.forEach((section, content) -> save(tx, section, versions.getOrDefault(section, 0L), content)
                        .orThrow());
            }
            return same;
        });
        Map<Section, SectionRecord> now = newest(episode);
        return fresh ? new Saving.Saved<>(now) : new Saving.Stale<>(now);
    }

    /** Within a transaction that has looked at the version. */
    void saveIn(DSLContext tx, Section section, long version, ObjectNode content) {
        save(tx, section, version, content).orThrow();
    }

    private Saving<SectionRecord> save(DSLContext tx, Section section, long version, ObjectNode content) {
        Episode episode = EpisodeRows.find(tx, writer.episodeId()).orElseThrow();
        SectionRecord before = newest(tx, writer, section, episode);
        if (before.version() != version) {
            return new Saving.Stale<>(before);
        }
        var after = new SectionRecord(section, version + 1, content, writer.now(), writer.user());
        insert(tx, writer, after);
        DraftStore.drop(tx, writer.user(), writer.episodeId(), section.key());
        Note note = version == 0
                ? Note.created(entity(section), writer.episodeId(), after.version(), content)
                : Note.changed(entity(section), writer.episodeId(), after.version(), before.content(), content);
        writer.note(tx, note);
        return new Saving.Saved<>(after);
    }

    static void insertFirst(DSLContext tx, EpisodeWriter writer, Section section, ObjectNode content) {
        insert(tx, writer, new SectionRecord(section, 1, content, writer.now(), writer.user()));
        writer.note(tx, Note.created(entity(section), writer.episodeId(), 1, content));
    }

    private static String entity(Section section) {
        return "section/" + section.key();
    }

    private static void insert(DSLContext tx, EpisodeWriter writer, SectionRecord section) {
        tx.insertInto(SectionVersionTable.SECTION_VERSION)
                .set(SectionVersionTable.EPISODE_ID, writer.episodeId())
                .set(SectionVersionTable.SECTION, section.section().key())
                .set(SectionVersionTable.VERSION, section.version())
                .set(SectionVersionTable.CONTENT, section.content())
                .set(SectionVersionTable.CHANGED_AT, section.changedAt())
                .set(SectionVersionTable.CHANGED_BY, section.changedBy())
                .execute();
    }

    private static SelectConditionStep<Record> select(DSLContext query, Condition which) {
        return query.select(java.util.List.of(
                        SectionVersionTable.SECTION,
                        SectionVersionTable.VERSION,
                        SectionVersionTable.CONTENT,
                        SectionVersionTable.CHANGED_AT,
                        SectionVersionTable.CHANGED_BY))
                .from(SectionVersionTable.SECTION_VERSION)
                .where(which);
    }

    private static Condition of(EpisodeWriter writer, Section section) {
        return SectionVersionTable.EPISODE_ID.eq(writer.episodeId()).and(SectionVersionTable.SECTION.eq(section.key()));
    }

    private static SectionRecord section(Record row) {
        return new SectionRecord(
                Section.find(row.get(SectionVersionTable.SECTION)).orElseThrow(),
                row.get(SectionVersionTable.VERSION),
                row.get(SectionVersionTable.CONTENT),
                row.get(SectionVersionTable.CHANGED_AT),
                row.get(SectionVersionTable.CHANGED_BY));
    }
}
