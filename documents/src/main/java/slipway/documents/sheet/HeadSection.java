package slipway.documents.sheet;

import java.time.format.DateTimeFormatter;
import slipway.documents.pdf.Tag;
import slipway.documents.words.Words;

/** Whom the sheet is for, which side, when, which version, from whom; and the code to the guide. */
final class HeadSection {
    /** Letters of a name from which on it is set smaller. */
    private static final int LONG_NAME = 40;

    private static final double CODE_MM = 32;

    private final HomeSheet sheet;
    private final Words words;

    HeadSection(HomeSheet sheet, Words words) {
        this.sheet = sheet;
        this.words = words;
    }

    void addTo(Tag body) {
        HomeSheet.Head head = sheet.head();
        Tag section = body.add("section", "head");
        Tag row = section.add("div", "row");
        Tag title = row.add("div", "cell");
        Tag eyebrow = title.add("p").line("span", "eyebrow", words.get("head.eyebrow"));
        if (!head.mark().isEmpty()) {
            eyebrow.text(". ").line("span", "mark", head.mark());
        }
        title.line("h1", head.personName().length() > LONG_NAME ? "word long" : "word", head.personName());
        title.line(
                "p",
                "for",
                words.get("head.for", words.get("part." + head.part().key())));
        facts(title.add("div", "facts"));
        sheet.guideAddress().ifPresent(address -> {
            row.add("div", "cell code")
                    .picture(QrCode.of(address), words.get("head.guide.alt", address), CODE_MM, CODE_MM)
                    .line("p", "", words.get("head.guide"));
            section.line("p", "newer", words.get("head.newer"));
        });
    }

    private void facts(Tag facts) {
        HomeSheet.Head head = sheet.head();
        HomeSheet.Clinic clinic = head.clinic();
        String day = DateTimeFormatter.ofPattern(
                        words.get("date"), sheet.language().locale())
                .format(head.given());
        String from = clinic.therapist().isEmpty() ? clinic.name() : clinic.therapist() + ", " + clinic.name();
        facts.line(
                "p",
                "",
                "%s: %s. %s: %s.".formatted(words.get("head.date"), day, words.get("head.version"), head.version()));
        facts.line("p", "word", "%s: %s".formatted(words.get("head.by"), from));
        facts.line("p", "word", "%s: %s".formatted(words.get("head.phone"), clinic.phone()));
    }
}
