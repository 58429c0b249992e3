package slipway.documents.letter;

import java.util.List;

/** A piece of a letter, before it is known whether it becomes text or PDF. */
sealed interface Block {
    /** The title of the letter. */
    record Title(String text) implements Block {}

    /** Heading of a section. */
    record Heading(String text) implements Block {}

    /** One or more sentences. */
    record Paragraph(String text) implements Block {}

    /** What must be seen first: a framed line with what to do. */
    record Notice(String text, String detail) implements Block {}

    /** A label and what belongs to it; an empty value is a blank to fill in. */
    record Field(String label, String value) implements Block {}

    /** A list of points. */
    record Points(List<String> texts) implements Block {
        public Points {
            texts = List.copyOf(texts);
        }
    }

    /** A table; every row has as many cells as the head. */
    record Grid(List<String> head, List<List<String>> rows) implements Block {
        public Grid {
            head = List.copyOf(head);
            rows = List.copyOf(rows);
        }
    }
}
