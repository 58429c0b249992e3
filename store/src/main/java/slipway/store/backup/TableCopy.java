package slipway.store.backup;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Copies every row of every table between a SQLite file and a PostgreSQL database that have the same tables. Values are
 * kept alike in both, so that only truth values, bytes and times of day need a word.
 */
final class TableCopy {
    private static final int BATCH = 500;

    private final Connection sqlite;
    private final Connection from;
    private final Connection to;

    /** One of the two is {@code sqlite}; both run within a transaction of the caller. */
    TableCopy(Connection sqlite, Connection from, Connection to) {
        this.sqlite = sqlite;
        this.from = from;
        this.to = to;
    }

    /** Copies all tables; gives the number of rows of each. */
    Map<String, Long> run() throws SQLException {
        var rows = new LinkedHashMap<String, Long>();
        for (String table : tables(sqlite)) {
            rows.put(table, copy(table));
        }
        return rows;
    }

    /** All tables of the program in the order in which they were made: none refers to a later one. */
    static List<String> tables(Connection sqlite) throws SQLException {
        var tables = new ArrayList<String>();
        try (var statement = sqlite.createStatement();
                ResultSet rows = statement.executeQuery("select name from sqlite_master where type = 'table'"
                        + " and name not like 'sqlite_%' and name <> 'schema_history' order by rowid")) {
            while (rows.next()) {
                tables.add(rows.getString(1));
            }
        }
        return tables;
    }

    private enum Kind {
        AS_IT_IS,
        TRUTH,
        BYTES,
        TIME
    }

    private Map<String, Kind> columns(String table) throws SQLException {
        var columns = new LinkedHashMap<String, Kind>();
        try (var statement = sqlite.createStatement();
                ResultSet rows = statement.executeQuery("pragma table_info(" + table + ")")) {
            while (rows.next()) {
                columns.put(
                        rows.getString("name"),
                        switch (rows.getString("type").toLowerCase(Locale.ROOT)) {
                            case "boolean" -> Kind.TRUTH;
                            case "blob" -> Kind.BYTES;
                            case "timestamp" -> Kind.TIME;
                            default -> Kind.AS_IT_IS;
                        });
            }
        }
        return columns;
    }

    private long copy(String table) throws SQLException {
        Map<String, Kind> columns = columns(table);
        String names = String.join(", ", columns.keySet());
        String marks =
                String.join(", ", columns.keySet().stream().map(name -> "?").toList());
        long count = 0;
        try (var read = from.createStatement();
                PreparedStatement write =
                        to.prepareStatement("insert into %s (%s) values (%s)".formatted(table, names, marks))) {
            read.setFetchSize(BATCH);
            try (ResultSet rows = read.executeQuery(select(table, names))) {
                while (rows.next()) {
                    put(rows, write, new ArrayList<>(columns.values()));
                    write.addBatch();
                    count++;
                    if (count % BATCH == 0) {
                        write.executeBatch();
                    }
                }
            }
            write.executeBatch();
        }
        return count;
    }

    /** Rows that other rows of the same table refer to come first. */
    private String select(String table, String names) throws SQLException {
        try (var statement = sqlite.createStatement();
                ResultSet keys = statement.executeQuery("pragma foreign_key_list(" + table + ")")) {
            while (keys.next()) {
                if (keys.getString("table").equals(table)) {
                    return ("with recursive ordered (key, depth) as (select id, 0 from %1$s where %2$s is null"
                                    + " union all select next.id, depth + 1 from %1$s next join ordered on next.%2$s = key)"
                                    + " select %3$s from %1$s join ordered on id = key order by depth")
                            .formatted(table, keys.getString("from"), names);
                }
            }
        }
        return "select %s from %s".formatted(names, table);
    }

    private static void put(ResultSet from, PreparedStatement to, List<Kind> kinds) throws SQLException {
        for (int column = 1; column <= kinds.size(); column++) {
            switch (kinds.get(column - 1)) {
                case TRUTH -> {
                    boolean value = from.getBoolean(column);
                    if (from.wasNull()) {
                        to.setNull(column, Types.BOOLEAN);
                    } else {
                        to.setBoolean(column, value);
                    }
                }
                case BYTES -> to.setBytes(column, from.getBytes(column));
                case TIME -> to.setTimestamp(column, from.getTimestamp(column));
                default -> to.setObject(column, from.getObject(column));
            }
        }
    }
}
