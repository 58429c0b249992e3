package slipway.web.episode.write;

import java.util.function.UnaryOperator;
import slipway.care.record.papers.Paper;
import slipway.documents.paper.PaperJson;
import slipway.documents.paper.PaperText;
import slipway.documents.paper.Signed;
import slipway.web.shell.Times;

/**
 * A paper in the list.
 *
 * @param title as printed; the kind if its text is not readable
 * @param state key of where it stands: {@code draft}, {@code signed}, {@code waits}, {@code altered}
 * @param by who signed it, or changed it last
 * @param blanks sentences that say that something was not recorded
 */
public record PaperRow(String id, String title, String day, String state, String when, String by, int blanks) {
    static PaperRow of(Paper paper, UnaryOperator<String> names, boolean waits) {
        Signed signed = Signed.of(paper);
        String by = signed.signature().map(each -> each.by()).orElse(paper.changedBy());
        String when = Times.minute(signed.signature().map(each -> each.at()).orElse(paper.changedAt()));
        String state =
                signed.signature().isEmpty() ? "draft" : !signed.unaltered() ? "altered" : waits ? "waits" : "signed";
        try {
            PaperText text = PaperJson.read(paper.text());
            return new PaperRow(
                    paper.id(),
                    text.title(),
                    Times.day(text.day()),
                    state,
                    when,
                    names.apply(by),
                    text.blanks().size());
        } catch (IllegalArgumentException e) {
            return new PaperRow(paper.id(), paper.kind(), "", state, when, names.apply(by), 0);
        }
    }
}
