package slipway.store.papers;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.impl.DSL;
import slipway.care.record.NotThere;
import slipway.care.record.Saving;
import slipway.care.record.papers.Paper;
import slipway.care.record.papers.Paper.Addendum;
import slipway.care.record.papers.Paper.Signature;
import slipway.care.record.papers.Papers;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.TrailForm;
import slipway.store.tables.AddendumTable;
import slipway.store.tables.PaperTable;
import slipway.store.trail.EpisodeWriter;
import slipway.store.trail.Note;

/** Notes and letters in the database. */
public final class PaperStore implements Papers {
    private final EpisodeWriter writer;

    public PaperStore(EpisodeWriter writer) {
        this.writer = writer;
    }

    @Override
    public Paper draft(String kind, Optional<String> visitId, String text) {
        var paper = new Paper(
                writer.newId(),
                writer.episodeId(),
                kind,
                visitId,
                text,
                1,
                writer.now(),
                writer.user(),
                Optional.empty(),
                List.of());
        return writer.write(tx -> {
            tx.insertInto(PaperTable.PAPER)
                    .set(PaperTable.ID, paper.id())
                    .set(PaperTable.EPISODE_ID, paper.episodeId())
                    .set(PaperTable.KIND, kind)
                    .set(PaperTable.VISIT_ID, visitId.orElse(null))
                    .set(PaperTable.BODY, text)
                    .set(PaperTable.VERSION, paper.version())
                    .set(PaperTable.CHANGED_AT, paper.changedAt())
                    .set(PaperTable.CHANGED_BY, paper.changedBy())
                    .execute();
            writer.note(tx, Note.created("paper", paper.id(), 1, paper));
            return paper;
        });
    }

    @Override
    public Saving<Paper> change(String paperId, long version, String text) {
        return onDraft(paperId, version, (tx, before) -> {
            tx.update(PaperTable.PAPER)
                    .set(PaperTable.BODY, text)
                    .set(PaperTable.VERSION, version + 1)
                    .set(PaperTable.CHANGED_AT, writer.now())
                    .set(PaperTable.CHANGED_BY, writer.user())
                    .where(PaperTable.ID.eq(paperId))
                    .execute();
            Paper after = get(tx, paperId);
            writer.note(tx, Note.changed("paper", paperId, after.version(), before, after));
            return after;
        });
    }

    @Override
    public Saving<Paper> sign(String paperId, long version) {
        return onDraft(paperId, version, (tx, before) -> {
            tx.update(PaperTable.PAPER)
                    .set(PaperTable.SIGNED_BY, writer.user())
                    .set(PaperTable.SIGNED_AT, writer.now())
                    .set(PaperTable.SIGNED_SHA256, TrailForm.sha256(before.text()))
                    .set(PaperTable.VERSION, version + 1)
                    .where(PaperTable.ID.eq(paperId))
                    .execute();
            Paper after = get(tx, paperId);
            writer.note(
                    tx,
                    Note.created(
                                    "paper",
                                    paperId,
                                    after.version(),
                                    after.signature().orElseThrow())
                            .as(Action.SIGN));
            return after;
        });
    }

    private Saving<Paper> onDraft(String paperId, long version, BiFunction<DSLContext, Paper, Paper> change) {
        return writer.write(tx -> {
            Paper before = get(tx, paperId);
            return before.version() != version || before.signature().isPresent()
                    ? new Saving.Stale<>(before)
                    : new Saving.Saved<>(change.apply(tx, before));
        });
    }

    @Override
    public Paper amend(String paperId, String text) {
        return writer.write(tx -> {
            Paper before = get(tx, paperId);
            if (before.signature().isEmpty()) {
                throw new IllegalStateException("only a signed paper is added to; a draft is changed");
            }
            var addendum = new Addendum(
                    before.addenda().size() + 1,
                    text,
                    new Signature(writer.user(), writer.now(), TrailForm.sha256(text)));
            tx.insertInto(AddendumTable.ADDENDUM)
                    .set(AddendumTable.PAPER_ID, paperId)
                    .set(AddendumTable.ADDENDUM_NUMBER, addendum.number())
                    .set(AddendumTable.BODY, text)
                    .set(AddendumTable.SIGNED_BY, addendum.signature().by())
                    .set(AddendumTable.SIGNED_AT, addendum.signature().at())
                    .set(AddendumTable.SIGNED_SHA256, addendum.signature().sha256())
                    .execute();
            writer.note(
                    tx,
                    Note.created("paper/addendum", paperId, before.version(), addendum)
                            .as(Action.SIGN));
            return get(tx, paperId);
        });
    }

    @Override
    public Optional<Paper> find(String paperId) {
        return writer.read(query -> papers(query, PaperTable.ID.eq(paperId))).stream()
                .findFirst();
    }

    @Override
    public List<Paper> list() {
        return writer.read(query -> papers(query, DSL.trueCondition()));
    }

    /** The trail holds what was there after each change; nothing is kept twice. */
    @Override
    public List<Paper.Text> texts(String paperId) {
        if (find(paperId).isEmpty()) {
            return List.of();
        }
        return writer.payloads("paper", paperId).stream()
                .filter(change -> change.after().has("text"))
                .map(change -> new Paper.Text(
                        change.version(), change.after().path("text").asString(), change.at(), change.who()))
                .toList();
    }

    private Paper get(DSLContext query, String paperId) {
        return papers(query, PaperTable.ID.eq(paperId)).stream()
                .findFirst()
                .orElseThrow(() -> new NotThere("paper", paperId));
    }

    /** Papers newest first, with their addenda, in two queries. */
    private List<Paper> papers(DSLContext query, Condition which) {
        var rows = new LinkedHashMap<String, Record>();
        query.select(List.of(
                        PaperTable.ID,
                        PaperTable.EPISODE_ID,
                        PaperTable.KIND,
                        PaperTable.VISIT_ID,
                        PaperTable.BODY,
                        PaperTable.VERSION,
                        PaperTable.CHANGED_AT,
                        PaperTable.CHANGED_BY,
                        PaperTable.SIGNED_BY,
                        PaperTable.SIGNED_AT,
                        PaperTable.SIGNED_SHA256))
                .from(PaperTable.PAPER)
                .where(PaperTable.EPISODE_ID.eq(writer.episodeId()), which)
                .orderBy(PaperTable.CHANGED_AT.desc(), PaperTable.ID.desc())
                .forEach(row -> rows.put(row.get(PaperTable.ID), row));
        Map<String, List<Addendum>> addenda = query
                .select(
                        AddendumTable.PAPER_ID,
                        AddendumTable.ADDENDUM_NUMBER,
                        AddendumTable.BODY,
                        AddendumTable.SIGNED_BY,
                        AddendumTable.SIGNED_AT,
                        AddendumTable.SIGNED_SHA256)
                .from(AddendumTable.ADDENDUM)
                .where(AddendumTable.PAPER_ID.in(rows.keySet()))
                .orderBy(AddendumTable.PAPER_ID, AddendumTable.ADDENDUM_NUMBER)
                .fetch()
                .stream()
                .collect(Collectors.groupingBy(
                        row -> row.value1(),
                        Collectors.mapping(
                                row -> new Addendum(
                                        row.value2(),
                                        row.value3(),
                                        new Signature(row.value4(), row.value5(), row.value6())),
                                Collectors.toList())));
        return rows.values().stream()
                .map(row -> paper(row, addenda.getOrDefault(row.get(PaperTable.ID), List.of())))
                .toList();
    }

    private static Paper paper(Record row, List<Addendum> addenda) {
        Optional<Signature> signature = Optional.ofNullable(row.get(PaperTable.SIGNED_BY))
                .map(by -> new Signature(by, row.get(PaperTable.SIGNED_AT), row.get(PaperTable.SIGNED_SHA256)));
        return new Paper(
                row.get(PaperTable.ID),
                row.get(PaperTable.EPISODE_ID),
                row.get(PaperTable.KIND),
                Optional.ofNullable(row.get(PaperTable.VISIT_ID)),
                row.get(PaperTable.BODY),
                row.get(PaperTable.VERSION),
                row.get(PaperTable.CHANGED_AT),
                row.get(PaperTable.CHANGED_BY),
                signature,
                addenda);
    }
}
