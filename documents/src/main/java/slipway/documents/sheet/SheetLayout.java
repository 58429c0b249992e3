package slipway.documents.sheet;

import java.util.List;
import slipway.documents.pdf.PrintDocument;
import slipway.documents.pdf.StyleSheet;
import slipway.documents.pdf.Tag;
import slipway.documents.words.Words;

/** The page of a home sheet in reading order: head, emergency, what to change, rules, cautions, exercises, diary. */
final class SheetLayout {
    /** Letters of a name that fit in the foot of every page; the head has it whole. */
    private static final int FOOT_NAME_LETTERS = 20;

    private static final String NO_BREAK = "\u00a0";
    private static final StyleSheet STYLE = StyleSheet.beside(SheetLayout.class, "sheet.css");

    private final HomeSheet sheet;
    private final SheetFormat format;
    private final Words words;
    private final List<PictureLayout> pictures;

    SheetLayout(HomeSheet sheet, SheetFormat format, Words words, List<PictureLayout> pictures) {
        this.sheet = sheet;
        this.format = format;
        this.words = words;
        this.pictures = pictures;
    }

    PrintDocument page() {
        HomeSheet.Head head = sheet.head();
        String css = STYLE.filled(format.paper(), format.type().points());
        PrintDocument page = PrintDocument.create(sheet.language(), words.get("title", head.personName()), css);
        Tag body = page.body().attribute("class", format.type() == SheetFormat.Type.LARGE ? "large" : "normal");
        foot(body);
        new HeadSection(sheet, words).addTo(body);
        emergency(body.add("section", "emergency"));
        section(body, "unload.heading", sheet.unload());
        section(body, "rules.heading", rules());
        section(body, "cautions.heading", sheet.cautions());
        body.line("p", "note", String.join(" ", words.list("cautions.line")));
        for (int i = 0; i < sheet.exercises().size(); i++) {
            new ExerciseSection(sheet.exercises().get(i), words).addTo(body, i, pictures.get(i));
        }
        if (!sheet.exercises().isEmpty()) {
            new DiarySection(sheet, words).addTo(body);
        }
        return page;
    }

    private void foot(Tag body) {
        HomeSheet.Head head = sheet.head();
        Tag foot = body.add("div").attribute("id", "foot").add("div", "row");
        foot.line(
                "div",
                "who",
                "%s, %s, %s. %s"
                        .formatted(
                                shortened(head.personName()),
                                words.get("part." + head.part().key()),
                                words.get("foot.version", head.version()),
                                words.get("foot.emergency", head.emergencyNumber())));
        Tag page = foot.add("div", "cell page").text(words.get("foot.page") + NO_BREAK);
        page.add("span", "now");
        page.text(NO_BREAK + words.get("foot.of") + NO_BREAK);
        page.add("span", "all");
    }

    private static String shortened(String name) {
        int letters = name.codePointCount(0, name.length());
        return letters <= FOOT_NAME_LETTERS
                ? name
                : name.substring(0, name.offsetByCodePoints(0, FOOT_NAME_LETTERS - 1))
                                .strip() + "…";
    }

    private void emergency(Tag box) {
        HomeSheet.Head head = sheet.head();
        box.line("h2", "", words.get("emergency.heading"));
        box.line("p", "intro", words.get("emergency.intro", head.emergencyNumber()));
        list(box, "ul", words.list("emergency.sign"));
        Tag call = box.add("div", "call");
        call.line("p", "intro", words.get("call.intro", head.clinic().phone()));
        list(call, "ul", words.list("call.sign"));
        call.line("p", "closed", words.get("call.closed"));
    }

    private List<String> rules() {
        return words.list(
                "rules.line", sheet.rules().settleMinutes(), sheet.rules().restMinutes());
    }

    private void section(Tag body, String headingKey, List<String> lines) {
        if (!lines.isEmpty()) {
            Tag section = body.add("section");
            section.line("h2", "", words.get(headingKey));
            list(section, "ul", lines);
        }
    }

    static void list(Tag parent, String kind, List<String> lines) {
        Tag list = parent.add(kind);
        lines.forEach(line -> list.add("li").text(line));
    }
}
