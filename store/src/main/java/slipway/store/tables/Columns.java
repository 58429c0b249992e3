package slipway.store.tables;

import java.time.Instant;
import java.time.LocalDate;
import org.jooq.Converter;
import org.jooq.DataType;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.impl.DSL;
import org.jooq.impl.SQLDataType;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * How values stand in the database: the same on SQLite and PostgreSQL and with every driver. Instants are whole
 * microseconds, days and words are text, JSON is text whose keys stay in their order.
 */
final class Columns {
    private static final DataType<String> TEXT = SQLDataType.VARCHAR.asConvertedDataType(
            Converter.ofNullable(String.class, String.class, text -> text, KeepableText::checked));
    private static final DataType<Instant> INSTANT = SQLDataType.BIGINT.asConvertedDataType(
            Converter.ofNullable(Long.class, Instant.class, Columns::instant, Columns::micros));
    private static final DataType<LocalDate> DAY = SQLDataType.VARCHAR.asConvertedDataType(
            Converter.ofNullable(String.class, LocalDate.class, LocalDate::parse, LocalDate::toString));
    private static final DataType<ObjectNode> JSON = SQLDataType.VARCHAR.asConvertedDataType(Converter.ofNullable(
            String.class,
            ObjectNode.class,
            text -> (ObjectNode) JsonMapper.shared().readTree(text),
            node -> KeepableText.checked(node.toString())));

    private static final long MICROS_PER_SECOND = 1_000_000;

    private Columns() {}

    static Table<Record> table(String name) {
        return DSL.table(DSL.name(name));
    }

    static Field<String> text(String table, String column) {
        return field(table, column, TEXT);
    }

    static Field<Instant> instant(String table, String column) {
        return field(table, column, INSTANT);
    }

    static Field<LocalDate> day(String table, String column) {
        return field(table, column, DAY);
    }

    static Field<ObjectNode> json(String table, String column) {
        return field(table, column, JSON);
    }

    /** The name of a constant. */
    static <E extends Enum<E>> Field<E> word(String table, String column, Class<E> type) {
        return field(
                table,
                column,
                SQLDataType.VARCHAR.asConvertedDataType(
                        Converter.ofNullable(String.class, type, word -> Enum.valueOf(type, word), Enum::name)));
    }

    static Field<Boolean> yesNo(String table, String column) {
        return field(table, column, SQLDataType.BOOLEAN);
    }

    static Field<Integer> whole(String table, String column) {
        return field(table, column, SQLDataType.INTEGER);
    }

    static Field<Long> wholeLong(String table, String column) {
        return field(table, column, SQLDataType.BIGINT);
    }

    static Field<Double> number(String table, String column) {
        return field(table, column, SQLDataType.DOUBLE);
    }

    static Field<byte[]> bytes(String table, String column) {
        return field(table, column, SQLDataType.BLOB);
    }

    private static <T> Field<T> field(String table, String column, DataType<T> type) {
        return DSL.field(DSL.name(table, column), type);
    }

    private static Instant instant(long micros) {
        return Instant.ofEpochSecond(
                Math.floorDiv(micros, MICROS_PER_SECOND), Math.floorMod(micros, MICROS_PER_SECOND) * 1_000);
    }

    private static long micros(Instant at) {
        return Math.addExact(Math.multiplyExact(at.getEpochSecond(), MICROS_PER_SECOND), at.getNano() / 1_000);
    }
}
