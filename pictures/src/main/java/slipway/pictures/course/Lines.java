package slipway.pictures.course;

import java.util.ArrayList;
import java.util.List;
import slipway.pictures.chart.LabelRows;

/** Breaks words into lines that fit. */
final class Lines {
    private Lines() {}

    /** Lines of at most so many px; a single word that is too long is cut with an ellipsis. */
    static List<String> of(String text, double room) {
        var lines = new ArrayList<String>();
        var line = new StringBuilder();
        for (String word : text.strip().split("\\s+", -1)) {
            if (!line.isEmpty() && LabelRows.widthOf(line + " " + word, Ground.TYPE) > room) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines.stream()
                .map(each -> LabelRows.of(List.of(0.0), List.of(each), Ground.TYPE, 0, room)
                        .get(0)
                        .text())
                .toList();
    }
}
