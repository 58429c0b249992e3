package slipway.benchmarks.load;

import java.sql.Connection;
import java.sql.SQLException;
import slipway.store.Store;

/** Check-ins of others that lie in the tables already, as years of a network leave them. */
final class Filler {
    private static final int BATCH = 5_000;
    /** Of one person over the years. */
    private static final int EACH = 500;

    private Filler() {}

    /**
     * Copies an episode as often as needed, and fills the copies with check-ins and their entries of the trail. Each copy is
     * of a therapist of its own: what grows is what is stored, not what one of them has to do.
     */
    static void fill(Store store, String episode, long count) throws SQLException {
        try (Connection connection = store.writing().getConnection()) {
            connection.setAutoCommit(false);
            String columns = columns(connection);
            for (long done = 0; done < count; done += EACH) {
                String copy = "filled-" + done;
                try (var statement = connection.createStatement()) {
                    statement.execute(
                            ("insert into episode (id,therapist_id,%1$s) select '%2$s','%2$s',%1$s from episode"
                                            + " where id = '%3$s'")
                                    .formatted(columns, copy, episode));
                }
                checkIns(connection, copy, Math.min(EACH, count - done));
                if (done % BATCH == 0) {
                    connection.commit();
                }
            }
            connection.commit();
            connection.setAutoCommit(true);
        }
    }

    private static String columns(Connection connection) throws SQLException {
        try (var statement = connection.createStatement();
                var rows = statement.executeQuery("select * from episode where 1 = 0")) {
            var names = new StringBuilder();
            for (int i = 1; i <= rows.getMetaData().getColumnCount(); i++) {
                String name = rows.getMetaData().getColumnName(i);
                names.append(
                        name.equals("id") || name.equals("therapist_id") ? "" : (names.isEmpty() ? "" : ",") + name);
            }
            return names.toString();
        }
    }

    private static void checkIns(Connection connection, String episode, long count) throws SQLException {
        try (var rows = connection.prepareStatement("insert into check_in (episode_id, id, session_id, exercise_id,"
                        + " body, received_at_us) values (?, ?, ?, 'some-glide', ?, ?)");
                var trail = connection.prepareStatement(
                        "insert into trail_entry (chain_kind, chain_id, seq, at_us, who,"
                                + " acting_role, action, entity, entity_id, version, payload_digest, previous_digest, digest)"
                                + " values ('FILLED', ?, ?, 1, 'filler', 'PROGRAM', 'CREATE', 'check-in', ?, 0, ?, ?, ?)")) {
            for (int i = 0; i < count; i++) {
                String id = episode + "-" + i;
                rows.setString(1, episode);
                rows.setString(2, id);
                rows.setString(3, id);
                rows.setString(4, "{\"words\":\"" + "y".repeat(120) + "\"}");
                rows.setLong(5, 1_000_000L * i);
                rows.addBatch();
                trail.setString(1, episode);
                trail.setLong(2, i);
                trail.setString(3, id);
                for (int column = 4; column <= 6; column++) {
                    trail.setString(column, "0".repeat(64));
                }
                trail.addBatch();
            }
            rows.executeBatch();
            trail.executeBatch();
        }
    }
}
