package slipway.documents.letter;

import java.util.List;
import slipway.documents.pdf.Paper;
import slipway.documents.pdf.PrintDocument;
import slipway.documents.pdf.StyleSheet;
import slipway.documents.pdf.Tag;
import slipway.exercises.exercise.Language;

/** A letter as a page to print. */
final class LetterPage {
    private static final StyleSheet STYLE = StyleSheet.beside(LetterPage.class, "letter.css");

    private final Tag body;

    private LetterPage(Tag body) {
        this.body = body;
    }

    static PrintDocument of(LetterContent content, Language language, Paper paper, int points) {
        PrintDocument page = PrintDocument.create(language, content.title(), STYLE.filled(paper, points));
        var letter = new LetterPage(page.body());
        content.blocks().forEach(letter::add);
        return page;
    }

    private void add(Block block) {
        if (block instanceof Block.Title title) {
            body.line("h1", "", title.text());
        } else if (block instanceof Block.Heading heading) {
            body.line("h2", "", heading.text());
        } else if (block instanceof Block.Paragraph paragraph) {
            body.line("p", "", paragraph.text());
        } else if (block instanceof Block.Notice notice) {
            body.add("div", "notice").line("p", "strong", notice.text()).line("p", "", notice.detail());
        } else if (block instanceof Block.Field field) {
            field(field);
        } else if (block instanceof Block.Points points) {
            Tag list = body.add("ul");
            points.texts().forEach(point -> list.add("li").text(point));
        } else if (block instanceof Block.Grid grid) {
            grid(grid);
        }
    }

    private void field(Block.Field field) {
        Tag row = body.add("div", "field");
        row.line("div", "label", field.label());
        row.line(
                "div",
                field.value().isBlank() ? "value blank" : "value",
                field.value().isBlank() ? "\u00a0" : field.value());
    }

    private void grid(Block.Grid grid) {
        Tag table = body.add("table");
        Tag head = table.add("thead").add("tr");
        for (int i = 0; i < grid.head().size(); i++) {
            head.add("th", "column-" + (i + 1))
                    .attribute("scope", "col")
                    .text(grid.head().get(i));
        }
        Tag rows = table.add("tbody");
        for (List<String> cells : grid.rows()) {
            Tag row = rows.add("tr");
            cells.forEach(cell -> row.line("td", "", cell));
        }
    }
}
