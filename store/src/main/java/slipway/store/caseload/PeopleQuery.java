package slipway.store.caseload;

import java.util.List;
import java.util.Optional;
import org.jooq.Condition;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.impl.DSL;
import slipway.care.record.caseload.PersonRow;
import slipway.store.person.FoldedName;
import slipway.store.person.PersonRows;
import slipway.store.tables.EpisodeTable;
import slipway.store.tables.PersonNameTable;
import slipway.store.tables.PersonTable;

/** People by the beginning of a name, a page at a time, along the index of names. */
final class PeopleQuery {
    /** Sorts behind every letter. */
    private static final String LAST = new String(Character.toChars(Character.MAX_CODE_POINT));

    private static final char BETWEEN = '\n';

    private PeopleQuery() {}

    static List<PersonRow> rows(
            DSLContext query, String clinicId, String text, String afterKey, int limit, Condition visible) {
        String start = FoldedName.of(text);
        return query.select(
                        PersonTable.ID,
                        PersonTable.NAME,
                        PersonTable.BIRTH_DATE,
                        PersonTable.AGE_YEARS,
                        PersonTable.AGE_TOLD_ON)
                .select(PersonNameTable.SEARCH_KEY, EpisodeTable.ID, EpisodeTable.STATE)
                .from(PersonNameTable.PERSON_NAME)
                .join(PersonTable.PERSON)
                .on(PersonTable.ID.eq(PersonNameTable.PERSON_ID))
                .leftJoin(EpisodeTable.EPISODE)
                .on(EpisodeTable.ID.eq(newestEpisode()))
                .where(PersonNameTable.CLINIC_ID.eq(clinicId), begins(start), behind(afterKey), visible)
                .orderBy(PersonNameTable.SEARCH_KEY, PersonNameTable.PERSON_ID)
                .limit(limit)
                .fetch(PeopleQuery::row);
    }

    /** Names that begin so; a person whom two words of the name would find stands at the first of them. */
    private static Condition begins(String start) {
        if (start.isEmpty()) {
            return PersonNameTable.WORD_POSITION.eq(DSL.inline(0));
        }
        Table<Record> other = PersonNameTable.PERSON_NAME.as("earlier");
        Field<String> key = DSL.field(DSL.name("earlier", "search_key"), String.class);
        return PersonNameTable.SEARCH_KEY
                .between(start, start + LAST)
                .andNotExists(DSL.selectOne()
                        .from(other)
                        .where(
                                DSL.field(DSL.name("earlier", "person_id"), String.class)
                                        .eq(PersonNameTable.PERSON_ID),
                                DSL.field(DSL.name("earlier", "word_position"), Integer.class)
                                        .lt(PersonNameTable.WORD_POSITION),
                                key.between(start, start + LAST)));
    }

    private static Condition behind(String afterKey) {
        if (afterKey.isEmpty()) {
            return DSL.trueCondition();
        }
        int cut = afterKey.indexOf(BETWEEN);
        if (cut < 0) {
            throw new IllegalArgumentException("no key of a row of people");
        }
        String key = afterKey.substring(0, cut);
        return PersonNameTable.SEARCH_KEY
                .ge(key)
                .and(PersonNameTable.SEARCH_KEY.gt(key).or(PersonNameTable.PERSON_ID.gt(afterKey.substring(cut + 1))));
    }

    private static Field<String> newestEpisode() {
        Table<Record> other = EpisodeTable.EPISODE.as("other_episode");
        Field<String> id = DSL.field(DSL.name("other_episode", "id"), String.class);
        return DSL.field(DSL.select(id)
                .from(other)
                .where(DSL.field(DSL.name("other_episode", "person_id"), String.class)
                        .eq(PersonTable.ID))
                .orderBy(DSL.field(DSL.name("other_episode", "opened_at_us")).desc(), id.desc())
                .limit(DSL.inline(1)));
    }

    private static PersonRow row(Record row) {
        return new PersonRow(
                row.get(PersonTable.ID),
                row.get(PersonTable.NAME),
                PersonRows.age(row),
                row.get(PersonNameTable.SEARCH_KEY) + BETWEEN + row.get(PersonTable.ID),
                Optional.ofNullable(row.get(EpisodeTable.ID)),
                Optional.ofNullable(row.get(EpisodeTable.STATE)));
    }
}
