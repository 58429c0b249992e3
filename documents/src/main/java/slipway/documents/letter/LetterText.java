package slipway.documents.letter;

import java.util.ArrayList;
import java.util.List;

/** A letter as plain text, at most 78 letters a line where words allow it. */
final class LetterText {
    private static final int LINE_LETTERS = 78;

    private final StringBuilder text = new StringBuilder();

    private LetterText() {}

    static String of(LetterContent content) {
        var letter = new LetterText();
        content.blocks().forEach(letter::add);
        return letter.text.toString().strip().replaceAll("\n{3,}", "\n\n") + "\n";
    }

    private void add(Block block) {
        if (block instanceof Block.Title title) {
            line("", title.text());
            line("", "=".repeat(title.text().length()));
        } else if (block instanceof Block.Heading heading) {
            text.append('\n');
            line("", heading.text());
            line("", "-".repeat(heading.text().length()));
        } else if (block instanceof Block.Paragraph paragraph) {
            text.append('\n');
            line("", paragraph.text());
            text.append('\n');
        } else if (block instanceof Block.Notice notice) {
            text.append('\n');
            line("*** ", notice.text());
            line("    ", notice.detail());
        } else if (block instanceof Block.Field field) {
            line("", field.label() + ": " + (field.value().isBlank() ? LetterContent.BLANK : field.value()));
        } else if (block instanceof Block.Points points) {
            points.texts().forEach(point -> line("- ", point));
        } else if (block instanceof Block.Grid grid) {
            grid.rows().forEach(row -> row(grid.head(), row));
        }
    }

    private void row(List<String> head, List<String> cells) {
        line("- ", cells.get(0));
        for (int i = 1; i < cells.size(); i++) {
            if (!cells.get(i).isBlank()) {
                line("  ", head.get(i) + ": " + cells.get(i));
            }
        }
    }

    private void line(String mark, String sentence) {
        String indent = mark;
        for (String part : wrapped(sentence, LINE_LETTERS - mark.length())) {
            text.append(indent).append(part).append('\n');
            indent = " ".repeat(mark.length());
        }
    }

    private static List<String> wrapped(String sentence, int most) {
        var lines = new ArrayList<String>();
        var line = new StringBuilder();
        for (String word : sentence.strip().split("\\s+", -1)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > most) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
