package slipway.store.caseload;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record2;
import org.jooq.ResultQuery;
import org.jooq.impl.DSL;
import slipway.care.record.caseload.PaperTrailRow;
import slipway.care.record.content.Section;
import slipway.store.tables.EpisodeTable;
import slipway.store.tables.PaperTable;
import slipway.store.tables.SectionVersionTable;
import slipway.store.tables.VisitTable;
import tools.jackson.databind.node.ObjectNode;

/** Paperwork, visits and signed reports of some episodes, in three queries however many they are. */
final class PaperTrailQuery {
    private static final String REPORT = "progress-report";

    private PaperTrailQuery() {}

    static List<PaperTrailRow> rows(DSLContext query, Condition seen) {
        Map<String, ObjectNode> paperwork = paperwork(query, seen);
        if (paperwork.isEmpty()) {
            return List.of();
        }
        Map<String, List<Instant>> visits = times(query.select(VisitTable.EPISODE_ID, VisitTable.STARTED_AT)
                .from(VisitTable.VISIT)
                .where(VisitTable.EPISODE_ID.in(paperwork.keySet()))
                .orderBy(VisitTable.STARTED_AT));
        Map<String, List<Instant>> reports = times(query.select(PaperTable.EPISODE_ID, PaperTable.SIGNED_AT)
                .from(PaperTable.PAPER)
                .where(
                        PaperTable.EPISODE_ID.in(paperwork.keySet()),
                        PaperTable.KIND.eq(REPORT),
                        PaperTable.SIGNED_AT.isNotNull())
                .orderBy(PaperTable.SIGNED_AT));
        return paperwork.entrySet().stream()
                .map(entry -> new PaperTrailRow(
                        entry.getKey(),
                        entry.getValue(),
                        visits.getOrDefault(entry.getKey(), List.of()),
                        reports.getOrDefault(entry.getKey(), List.of())))
                .toList();
    }

    private static Map<String, ObjectNode> paperwork(DSLContext query, Condition seen) {
        return query
                .select(SectionVersionTable.EPISODE_ID, SectionVersionTable.CONTENT)
                .from(SectionVersionTable.SECTION_VERSION)
                .join(EpisodeTable.EPISODE)
                .on(EpisodeTable.ID.eq(SectionVersionTable.EPISODE_ID))
                .where(
                        seen,
                        SectionVersionTable.SECTION.eq(Section.PAPERWORK.key()),
                        SectionVersionTable.VERSION.eq(newest()))
                .fetch()
                .stream()
                .collect(Collectors.toMap(Record2::value1, Record2::value2));
    }

    private static Field<Long> newest() {
        var other = SectionVersionTable.SECTION_VERSION.as("other_version");
        return DSL.field(DSL.select(DSL.max(DSL.field(DSL.name("other_version", "version"), Long.class)))
                .from(other)
                .where(
                        DSL.field(DSL.name("other_version", "episode_id"), String.class)
                                .eq(EpisodeTable.ID),
                        DSL.field(DSL.name("other_version", "section"), String.class)
                                .eq(Section.PAPERWORK.key())));
    }

    private static Map<String, List<Instant>> times(ResultQuery<Record2<String, Instant>> rows) {
        return rows.fetch().stream()
                .collect(Collectors.groupingBy(
                        Record2::value1, Collectors.mapping(Record2::value2, Collectors.toList())));
    }
}
