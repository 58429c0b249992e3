package slipway.documents.sheet;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Collections;
import slipway.documents.pdf.Tag;
import slipway.documents.words.Words;

/** Two weeks of boxes to tick, one line a day from the day the sheet was given, and what to write beside them. */
final class DiarySection {
    private static final int DAYS = 14;
    /** More exercises, or longer names, are called by their number in the head of the table. */
    private static final int MOST_NAMED = 3;

    private static final int LONGEST_NAME = 40;
    private static final String BOX = "☐";

    private final HomeSheet sheet;
    private final Words words;

    DiarySection(HomeSheet sheet, Words words) {
        this.sheet = sheet;
        this.words = words;
    }

    void addTo(Tag body) {
        Tag section = body.add("section", "diary").attribute("id", "diary");
        section.line("h2", "", words.get("diary.heading"));
        section.line("p", "", words.get("diary.intro"));
        Tag table = section.add("table");
        head(table.add("thead").add("tr"));
        Tag rows = table.add("tbody");
        var day = DateTimeFormatter.ofPattern(
                words.get("diary.date"), sheet.language().locale());
        for (int i = 0; i < DAYS; i++) {
            row(rows.add("tr"), day.format(date(i)));
        }
        section.line("p", "key", words.get("diary.morning.key"));
        section.line("p", "", words.get("diary.note"));
    }

    private LocalDate date(int dayIndex) {
        return sheet.head().given().plusDays(dayIndex);
    }

    private void head(Tag row) {
        columnHead(row, words.get("diary.day"));
        for (int i = 0; i < sheet.exercises().size(); i++) {
            columnHead(row, exerciseHead(i));
        }
        columnHead(row, words.get("diary.worst"));
        columnHead(row, words.get("diary.settled"));
        columnHead(row, words.get("diary.morning"));
    }

    /** Number and, where there is room for it, name. */
    private String exerciseHead(int index) {
        String name = sheet.exercises().get(index).name();
        boolean room = sheet.exercises().size() <= MOST_NAMED && name.length() <= LONGEST_NAME;
        return room ? (index + 1) + ". " + name : Integer.toString(index + 1);
    }

    private static void columnHead(Tag row, String text) {
        row.add("th").attribute("scope", "col").text(text);
    }

    private void row(Tag row, String day) {
        row.add("th").attribute("scope", "row").text(day);
        for (SheetExercise exercise : sheet.exercises()) {
            int sessions = exercise.doses().usual().sessionsPerDay();
            row.add("td", "boxes").text(String.join(" ", Collections.nCopies(sessions, BOX)));
        }
        row.add("td", "blank");
        row.add("td", "blank");
        row.line("td", "blank", words.get("diary.morning.choices"));
    }
}
