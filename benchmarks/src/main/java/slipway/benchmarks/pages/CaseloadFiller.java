package slipway.benchmarks.pages;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import slipway.store.Store;

/**
 * Episodes of two years with what the figures of a caseload read: a visit, a plan at home, reports, first and last scores
 * of two measures, a goal. Nine of ten are discharged.
 */
final class CaseloadFiller {
    private static final int THERAPISTS = 50;
    private static final int REPORTS = 12;
    private static final int DAYS = 700;
    private static final long MICROS_A_DAY = 86_400_000_000L;
    private static final int BATCH = 2_000;

    private final Connection connection;
    private final String clinicId;
    private final long nowUs;

    private CaseloadFiller(Connection connection, String clinicId, Instant now) {
        this.connection = connection;
        this.clinicId = clinicId;
        this.nowUs = ChronoUnit.MICROS.between(Instant.EPOCH, now);
    }

    /** Adds the episodes from one number on up to another. */
    static void fill(Store store, String clinicId, int from, int to, Instant now) throws SQLException {
        try (Connection connection = store.writing().getConnection()) {
            connection.setAutoCommit(false);
            var filler = new CaseloadFiller(connection, clinicId, now);
            for (int first = from; first < to; first += BATCH) {
                filler.batch(first, Math.min(to, first + BATCH));
                connection.commit();
            }
            connection.setAutoCommit(true);
        }
    }

    private void batch(int from, int to) throws SQLException {
        insert(
                "insert into person (id, clinic_id, name, language, invented, version, created_at_us, created_by)"
                        + " values (?, ?, ?, 'EN', true, 1, ?, 'bench')",
                from,
                to,
                1,
                (i, j) -> new Object[] {"p" + i, clinicId, "Bench " + i, opened(i)});
        insert(
                "insert into episode (id, person_id, clinic_id, side, therapist_id, state, opened_at_us, opened_by,"
                        + " closed_at_us, version) values (?, ?, ?, 'LEFT', ?, ?, ?, 'bench', ?, 1)",
                from,
                to,
                1,
                (i, j) -> new Object[] {
                    "e" + i,
                    "p" + i,
                    clinicId,
                    "t" + i % THERAPISTS,
                    isOpen(i) ? "OPEN" : "CLOSED",
                    opened(i),
                    isOpen(i) ? null : Long.valueOf(opened(i) + MICROS_A_DAY * (20 + i % 60))
                });
        insert(
                "insert into visit (id, episode_id, visit_number, staff_id, started_at_us, version)"
                        + " values (?, ?, 1, 'bench', ?, 1)",
                from,
                to,
                1,
                (i, j) -> new Object[] {"v" + i, "e" + i, opened(i)});
        insert(
                "insert into plan (episode_id, plan_number, inputs, input_versions, input_digest, program_version,"
                        + " data_digest, body, ceilings, home, state, made_at_us, made_by, state_at_us, state_by,"
                        + " released_at_us) values (?, 1, '', '{}', '', '', '', '{}', '{}', '{}', 'RELEASED', ?, 'bench', ?,"
                        + " 'bench', ?)",
                from,
                to,
                1,
                (i, j) -> new Object[] {"e" + i, opened(i), opened(i), opened(i)});
        insert(
                "insert into goal (id, episode_id, words, target, state, version, created_at_us, changed_at_us,"
                        + " changed_by) values (?, ?, '', '{}', 'open', 1, ?, ?, 'bench')",
                from,
                to,
                1,
                (i, j) -> new Object[] {"g" + i, "e" + i, opened(i), opened(i)});
        insert(
                "insert into check_in (episode_id, id, session_id, exercise_id, body, received_at_us)"
                        + " values (?, ?, ?, 'some-glide', '{}', ?)",
                from,
                to,
                REPORTS,
                (i, j) -> new Object[] {"e" + i, "r" + j, "s" + j, opened(i) + MICROS_A_DAY * j});
        insert(
                "insert into measure_entry (id, episode_id, measure_id, taken_on, body, at_us, made_by)"
                        + " values (?, ?, ?, ?, ?, ?, 'bench')",
                from,
                to,
                4,
                (i, j) -> new Object[] {
                    "m" + i + "-" + j,
                    "e" + i,
                    j % 2 == 0 ? "rmdq" : "pain",
                    day(opened(i) + MICROS_A_DAY * 18L * (j / 2)),
                    "{\"total\":" + (j < 2 ? 9 : (i + i / THERAPISTS) % 9) + "}",
                    opened(i)
                });
    }

    private static boolean isOpen(int i) {
        return i % 10 == 0;
    }

    /** Spread over two years; the open ones over the last four weeks. */
    private long opened(int i) {
        long days = isOpen(i) ? i / 10 % 28 : i % DAYS;
        return nowUs - MICROS_A_DAY * days - i;
    }

    private static String day(long us) {
        return java.time.LocalDate.ofEpochDay(us / MICROS_A_DAY).toString();
    }

    /** Values of one row. */
    private interface Values {
        Object[] of(int episode, int number);
    }

    private void insert(String sql, int from, int to, int each, Values values) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int i = from; i < to; i++) {
                for (int j = 0; j < each; j++) {
                    Object[] row = values.of(i, j);
                    for (int column = 0; column < row.length; column++) {
                        statement.setObject(column + 1, row[column]);
                    }
                    statement.addBatch();
                }
            }
            statement.executeBatch();
        }
    }
}
