package slipway.documents.paper;

import java.util.ArrayList;
import java.util.List;
import slipway.care.record.papers.Paper;
import slipway.documents.words.Words;

/** Signatures and addenda in words. */
final class PaperStanding {
    private PaperStanding() {}

    static List<String> lines(Signed signed, Words words) {
        var lines = new ArrayList<String>();
        signed.signature()
                .ifPresent(by -> lines.add(words.get("page.signed", by.by(), PaperPage.day(by.at()), by.sha256())));
        for (Paper.Signature by : signed.coSignatures()) {
            lines.add(words.get("page.coSigned", by.by(), PaperPage.day(by.at())));
        }
        for (Paper.Addendum addendum : signed.addenda()) {
            var by = addendum.signature();
            lines.add(words.get("page.addendum", by.by(), PaperPage.day(by.at()), addendum.text()));
        }
        if (!signed.unaltered()) {
            lines.add(words.get("page.altered"));
        }
        return lines;
    }
}
