package slipway.care.follow;

import static slipway.care.follow.CheckInColumn.BEFORE;
import static slipway.care.follow.CheckInColumn.CHECKIN_ID;
import static slipway.care.follow.CheckInColumn.EMERGENCY;
import static slipway.care.follow.CheckInColumn.EXERCISE;
import static slipway.care.follow.CheckInColumn.FLARE_EXERCISE;
import static slipway.care.follow.CheckInColumn.KIND;
import static slipway.care.follow.CheckInColumn.NEW_WEAKNESS;
import static slipway.care.follow.CheckInColumn.NEXT_MORNING;
import static slipway.care.follow.CheckInColumn.REACH;
import static slipway.care.follow.CheckInColumn.REPETITIONS_DONE;
import static slipway.care.follow.CheckInColumn.REPORTED_AT;
import static slipway.care.follow.CheckInColumn.SESSION_ID;
import static slipway.care.follow.CheckInColumn.SETTLE_MINUTES;
import static slipway.care.follow.CheckInColumn.STARTED_AT;
import static slipway.care.follow.CheckInColumn.STILL_NUMB;
import static slipway.care.follow.CheckInColumn.USUAL_PAIN;
import static slipway.care.follow.CheckInColumn.WORST;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import slipway.care.table.Cell;
import slipway.care.table.CsvTable;
import slipway.exercises.yaml.Mistake;
import slipway.exercises.yaml.MistakesException;
import slipway.reasoning.response.checkin.CheckIn;
import slipway.reasoning.response.checkin.EmergencyAnswer;
import slipway.reasoning.response.checkin.Kind;
import slipway.reasoning.response.checkin.Morning;
import slipway.reasoning.response.checkin.Reach;
import tools.jackson.databind.JsonNode;

/** Reads a file of check-ins. Either all of it can be used or nothing is taken. */
public final class CheckInFile {
    /** Largest file that is read. */
    public static final int MAX_BYTES = 2_000_000;

    private final List<Mistake> mistakes = new ArrayList<>();
    private final Collection<String> exercises;

    private CheckInFile(Collection<String> exercises) {
        this.exercises = exercises;
    }

    /**
     * The check-ins of a file, as often as they are there.
     *
     * @param source name for messages
     * @param exercises ids that may be reported on
     * @throws MistakesException naming every mistake with line and column
     */
    public static List<CheckIn> read(String source, byte[] bytes, Collection<String> exercises) {
        var file = new CheckInFile(exercises);
        List<CheckIn> checkIns = file.readAll(bytes);
        if (!file.mistakes.isEmpty()) {
            throw new MistakesException(source, file.mistakes);
        }
        return checkIns;
    }

    /** The columns of such a file, in their order. */
    public static List<String> columns() {
        return CheckInColumn.keys();
    }

    /** A report of the record as a file of one row; fields that are not columns are left out. */
    public static String text(JsonNode body) {
        String cells = CheckInColumn.keys().stream()
                .map(key -> body.path(key).asString(""))
                .map(cell -> '"' + cell.replace("\"", "\"\"") + '"')
                .collect(Collectors.joining(","));
        return String.join(",", CheckInColumn.keys()) + "\n" + cells + "\n";
    }

    private List<CheckIn> readAll(byte[] bytes) {
        var checkIns = new ArrayList<CheckIn>();
        var across = new AcrossRows();
        for (List<Cell> cells : CsvTable.rows(bytes, MAX_BYTES, CheckInColumn.keys(), mistakes)) {
            var row = new CheckInRow(cells, mistakes);
            row(row).ifPresent(checkIn -> {
                across.check(row, checkIn);
                checkIns.add(checkIn);
            });
        }
        across.finish();
        return checkIns;
    }

    private Optional<CheckIn> row(CheckInRow row) {
        Optional<OffsetDateTime> started = row.time(STARTED_AT);
        Optional<OffsetDateTime> reported = row.time(REPORTED_AT);
        if (CheckInRow.hasOffset(row.text(STARTED_AT).orElse(""))
                != CheckInRow.hasOffset(row.text(REPORTED_AT).orElse(""))) {
            row.add(REPORTED_AT, "must tell its offset from UTC if and only if started_at does");
        }
        row.required(CHECKIN_ID);
        row.required(SESSION_ID);
        row.required(EXERCISE);
        row.required(STILL_NUMB);
        row.required(NEW_WEAKNESS);
        row.required(EMERGENCY);
        var before = row.whole(BEFORE, CheckIn.WORST);
        var done = row.whole(REPETITIONS_DONE, CheckIn.MOST_REPETITIONS);
        var worst = row.whole(WORST, CheckIn.WORST);
        var kind = row.word(KIND, Kind.class);
        var usualPain = row.yesNo(USUAL_PAIN);
        var reach = row.word(REACH, Reach.class);
        var settle = row.minutes(SETTLE_MINUTES, CheckIn.LONGEST_SETTLE_MINUTES);
        var morning = row.word(NEXT_MORNING, Morning.class);
        var numb = row.yesNo(STILL_NUMB);
        var weak = row.yesNo(NEW_WEAKNESS);
        var emergency = row.word(EMERGENCY, EmergencyAnswer.class);
        var exercise = row.exercise(EXERCISE, exercises);
        var flare = row.exercise(FLARE_EXERCISE, exercises);
        RowRules.check(row);
        if (row.broken()) {
            return Optional.empty();
        }
        return Optional.of(new CheckIn(
                row.required(CHECKIN_ID),
                row.required(SESSION_ID),
                exercise.orElseThrow(),
                started.orElseThrow(),
                before,
                done,
                worst,
                kind,
                usualPain,
                reach,
                settle,
                morning,
                numb.orElseThrow(),
                weak.orElseThrow(),
                emergency.orElseThrow(),
                flare,
                reported.orElseThrow()));
    }
}
