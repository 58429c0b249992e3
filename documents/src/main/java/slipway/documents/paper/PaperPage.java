package slipway.documents.paper;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import slipway.documents.pdf.Paper;
import slipway.documents.pdf.PrintDocument;
import slipway.documents.pdf.StyleSheet;
import slipway.documents.pdf.Tag;
import slipway.documents.words.Words;

/** A paper as a page to print. */
final class PaperPage {
    private static final StyleSheet STYLE = StyleSheet.beside(PaperPage.class, "paper.css");
    private static final StyleSheet LARGE = StyleSheet.beside(PaperPage.class, "for-the-person.css");
    private static final int POINTS = 10;
    private static final int LARGE_POINTS = 13;
    private static final double PICTURE_WIDTH_MM = 172;
    private static final double RULER_HEIGHT_MM = 70;
    private static final double COURSE_HEIGHT_MM = 150;

    private final PaperText text;
    private final PaperFrame frame;
    private final Words words;
    private final Tag body;

    private PaperPage(PaperText text, PaperFrame frame, Words words, Tag body) {
        this.text = text;
        this.frame = frame;
        this.words = words;
        this.body = body;
    }

    static PrintDocument of(PaperText text, PaperFrame frame, Paper paper, Words words) {
        String style = text.kind().forThePerson() ? LARGE.filled(paper, LARGE_POINTS) : STYLE.filled(paper, POINTS);
        PrintDocument page = PrintDocument.create(text.language(), text.title(), style);
        new PaperPage(text, frame, words, page.body()).write();
        return page;
    }

    private void write() {
        marks();
        body.line("h1", "", text.title());
        envelope();
        text.parts().stream().filter(part -> !part.isEmpty()).forEach(this::part);
        picture("page.ruler", frame.ruler(), RULER_HEIGHT_MM);
        picture("page.course", frame.course(), COURSE_HEIGHT_MM);
        if (!text.kind().forThePerson()) {
            signatures();
        }
    }

    private void marks() {
        if (frame.mark()) {
            body.line("p", "mark", words.get("page.invented"));
        }
        if (!words.reviewed()) {
            body.line("p", "mark", words.get("page.unreviewed"));
        }
    }

    private void envelope() {
        Tag box = body.add("div", "envelope");
        field(box, "page.date", PaperFrame.date(text.day(), words));
        field(box, "page.person", frame.person());
        if (!text.kind().forThePerson()) {
            field(
                    box,
                    "page.born",
                    frame.born().map(day -> PaperFrame.date(day, words)).orElse(""));
        }
        field(box, "page.clinic", frame.clinic());
        if (!text.kind().forThePerson()) {
            field(box, "page.writer", frame.writer());
        }
        if (text.kind() == PaperKind.LETTER || text.kind() == PaperKind.REFERRAL) {
            field(box, "page.to", frame.to());
        }
    }

    private void field(Tag box, String labelKey, String value) {
        Tag row = box.add("div", "field");
        row.line("div", "label", words.get(labelKey));
        row.line("div", value.isBlank() ? "value blank" : "value", value.isBlank() ? "\u00a0" : value);
    }

    private void part(Part part) {
        Tag block = body.add("div", part.key().equals("emergency") || part.key().equals("urgency") ? "notice" : "part");
        block.line("h2", "", part.heading());
        if (part.sentences().size() == 1) {
            block.line(
                    "p", style(part.sentences().get(0)), part.sentences().get(0).text());
            return;
        }
        boolean intro = part.sentences().get(0).text().endsWith(":");
        if (intro) {
            block.line("p", "", part.sentences().get(0).text());
        }
        Tag list = block.add("ul");
        part.sentences().stream().skip(intro ? 1 : 0).forEach(each -> list.line("li", style(each), each.text()));
    }

    private static String style(Sentence sentence) {
        return sentence.state() == Sentence.State.BLANK ? "not-recorded" : "said";
    }

    private void picture(String headingKey, Optional<PaperFrame.Picture> picture, double mostHighMm) {
        picture.ifPresent(shown -> {
            Tag block = body.add("div", "picture");
            block.line("h2", "", words.get(headingKey));
            block.add("div").picture(shown.drawing(), shown.alternative(), PICTURE_WIDTH_MM, mostHighMm);
        });
    }

    private void signatures() {
        Tag box = body.add("div", "signatures");
        Optional<Signed> standing =
                frame.standing().filter(each -> each.signature().isPresent());
        if (standing.isEmpty()) {
            box.line("p", "mark", words.get("page.draft"));
            field(box, "page.signature", "");
            field(box, "page.coSignature", "");
        } else {
            PaperStanding.lines(standing.get(), words).forEach(line -> box.line("p", "", line));
        }
        if (text.kind() == PaperKind.PLAN_OF_CARE) {
            field(box, "page.certification", "");
        }
    }

    static LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, ZoneOffset.UTC);
    }
}
