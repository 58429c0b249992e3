package slipway.exercises.yaml;

import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;

/** A place in a text, line and column from 1. */
record Place(int line, int column) {
    static final Place START = new Place(1, 1);

    static Place of(Optional<Mark> mark) {
        return mark.map(at -> new Place(at.getLine() + 1, at.getColumn() + 1)).orElse(START);
    }

    /** The place just behind a text. */
    static Place behind(CharSequence text) {
        int line = 1;
        int column = 1;
        for (int i = 0; i < text.length(); i++) {
            column++;
            if (text.charAt(i) == '\n') {
                line++;
                column = 1;
            }
        }
        return new Place(line, column);
    }
}
