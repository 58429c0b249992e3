package slipway.documents.paper;

import slipway.documents.words.Words;

/** A paper as plain text: headings, then one sentence a line. */
final class PaperPlain {
    private static final String BLANK = "____________________";

    private PaperPlain() {}

    static String of(PaperText text, PaperFrame frame, Words words) {
        var out = new StringBuilder();
        if (frame.mark()) {
            out.append(words.get("page.invented")).append("\n\n");
        }
        out.append(text.title())
                .append('\n')
                .append("=".repeat(text.title().length()))
                .append('\n');
        field(out, words.get("page.date"), text.day().toString());
        field(out, words.get("page.person"), frame.person());
        field(out, words.get("page.clinic"), frame.clinic());
        field(out, words.get("page.writer"), frame.writer());
        for (Part part : text.parts()) {
            if (part.isEmpty()) {
                continue;
            }
            out.append('\n').append(part.heading()).append('\n');
            part.sentences()
                    .forEach(each -> out.append("- ").append(each.text()).append('\n'));
        }
        out.append('\n');
        frame.standing().stream()
                .flatMap(signed -> PaperStanding.lines(signed, words).stream())
                .forEach(line -> out.append(line).append('\n'));
        if (frame.standing().flatMap(Signed::signature).isEmpty()) {
            out.append(words.get("page.draft")).append('\n');
        }
        return out.toString();
    }

    private static void field(StringBuilder out, String label, String value) {
        out.append(label).append(": ").append(value.isBlank() ? BLANK : value).append('\n');
    }
}
