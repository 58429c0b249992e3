package slipway.benchmarks.load;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/** The rows that check-ins left behind, taken out and put back by plain statements, one durable commit for each check-in. */
final class Rows {
    private static final List<String> TABLES = List.of("check_in", "trail_entry", "trail_payload");

    private final Connection connection;
    private final List<List<List<Object>>> ofTables = new ArrayList<>();
    private final List<String> inserts = new ArrayList<>();

    /** Takes the newest rows of each table out. */
    Rows(Connection connection, int count) throws SQLException {
        this.connection = connection;
        connection.setAutoCommit(false);
        for (String table : TABLES) {
            take(table, table.equals("check_in") ? "received_at_us desc, id desc" : "seq desc", count);
        }
        connection.commit();
    }

    private void take(String table, String order, int count) throws SQLException {
        var rows = new ArrayList<List<Object>>();
        int columns;
        List<String> names = new ArrayList<>();
        try (var statement = connection.createStatement();
                ResultSet found = statement.executeQuery(
                        "select * from " + table + where(table) + " order by " + order + " limit " + count)) {
            columns = found.getMetaData().getColumnCount();
            for (int i = 1; i <= columns; i++) {
                names.add(found.getMetaData().getColumnName(i));
            }
            while (found.next()) {
                var row = new ArrayList<Object>();
                for (int i = 1; i <= columns; i++) {
                    row.add(found.getObject(i));
                }
                rows.add(0, row);
            }
        }
        if (rows.size() != count) {
            throw new IllegalStateException(table + " holds " + rows.size() + " rows, not " + count);
        }
        try (var statement = connection.createStatement()) {
            statement.execute("delete from " + table + where(table));
        }
        ofTables.add(rows);
        inserts.add("insert into %s (%s) values (%s)"
                .formatted(
                        table,
                        String.join(",", names),
                        String.join(",", names.stream().map(n -> "?").toList())));
    }

    /** In the trail, those of people; the clinic's own are few and stay. */
    private static String where(String table) {
        return table.equals("check_in") ? "" : " where chain_kind = 'PERSON'";
    }

    /** Puts them back; gives the seconds it took. */
    double putBack() throws SQLException {
        List<PreparedStatement> statements = new ArrayList<>();
        for (String insert : inserts) {
            statements.add(connection.prepareStatement(insert));
        }
        PreparedStatement head = connection.prepareStatement(
                "update trail_head set seq = seq, digest = digest where chain_kind = 'PERSON' and chain_id = ?");
        long begin = System.nanoTime();
        for (int i = 0; i < ofTables.get(0).size(); i++) {
            for (int table = 0; table < statements.size(); table++) {
                List<Object> row = ofTables.get(table).get(i);
                for (int column = 0; column < row.size(); column++) {
                    statements.get(table).setObject(column + 1, row.get(column));
                }
                statements.get(table).executeUpdate();
            }
            head.setObject(1, ofTables.get(1).get(i).get(1));
            head.executeUpdate();
            connection.commit();
        }
        return (System.nanoTime() - begin) / 1e9;
    }
}
