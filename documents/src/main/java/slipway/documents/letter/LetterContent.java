package slipway.documents.letter;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import slipway.documents.words.Words;

/** What stands in a referral letter, in order, whatever it is printed on. */
final class LetterContent {
    /** A blank of about a handwritten name. */
    static final String BLANK = "____________________________";

    private static final String SHORT_BLANK = "______________";

    private final ReferralLetter letter;
    private final Words words;

    LetterContent(ReferralLetter letter, Words words) {
        this.letter = letter;
        this.words = words;
    }

    /** What the document is called. */
    String title() {
        return words.get("title", filled(letter.person().name()));
    }

    List<Block> blocks() {
        var blocks = new ArrayList<Block>();
        if (!letter.mark().isEmpty()) {
            blocks.add(new Block.Paragraph(letter.mark()));
        }
        blocks.add(new Block.Title(words.get("heading")));
        envelope(blocks);
        String urgency = "urgency." + letter.urgency().key();
        blocks.add(new Block.Notice(words.get(urgency), words.get(urgency + ".detail")));
        section(blocks, "found.heading", findings());
        List<String> done = letter.done().isEmpty() ? List.of(BLANK, BLANK) : letter.done();
        section(blocks, "done.heading", new Block.Points(done));
        blocks.add(new Block.Paragraph(String.join(
                " ",
                Stream.concat(letter.notes().stream(), words.list("note").stream())
                        .toList())));
        blocks.add(new Block.Field(words.get("signed"), ""));
        clearance(blocks);
        return blocks;
    }

    private void envelope(List<Block> blocks) {
        ReferralLetter.Envelope envelope = letter.envelope();
        ReferralLetter.Person person = letter.person();
        blocks.add(new Block.Field(words.get("date"), date(envelope.written())));
        blocks.add(new Block.Field(words.get("to"), envelope.to()));
        blocks.add(new Block.Field(
                words.get("from"), "%s, %s".formatted(filled(envelope.therapist()), filled(envelope.clinic()))));
        blocks.add(new Block.Field(words.get("phone"), envelope.phone()));
        blocks.add(new Block.Field(words.get("person"), person.name()));
        blocks.add(
                new Block.Field(words.get("born"), person.born().map(this::date).orElse("")));
        blocks.add(new Block.Field(words.get("person.phone"), person.phone()));
    }

    private void section(List<Block> blocks, String headingKey, Block content) {
        blocks.add(new Block.Heading(words.get(headingKey)));
        blocks.add(content);
    }

    private Block findings() {
        List<List<String>> rows = letter.found().stream()
                .map(finding -> List.of(
                        finding.what(), finding.when().isBlank() ? SHORT_BLANK : finding.when(), finding.basis()))
                .toList();
        return new Block.Grid(
                List.of(words.get("found.what"), words.get("found.when"), words.get("found.basis")), rows);
    }

    private void clearance(List<Block> blocks) {
        blocks.add(new Block.Heading(words.get("clearance.heading")));
        blocks.add(new Block.Paragraph(words.get("clearance.intro")));
        words.list("clearance.field").forEach(label -> blocks.add(new Block.Field(label, "")));
    }

    private String date(LocalDate day) {
        return DateTimeFormatter.ofPattern(
                        words.get("date.pattern"), words.language().locale())
                .format(day);
    }

    private static String filled(String text) {
        return text.isBlank() ? BLANK : text.strip();
    }
}
