package slipway.documents.paper;

import java.time.Instant;
import java.time.ZoneOffset;
import slipway.documents.pdf.Paper;
import slipway.documents.pdf.PdfEngine;
import slipway.documents.pdf.Printed;
import slipway.documents.words.Words;

/** Prints notes and letters. Safe for use by several threads; keep one. */
public final class PaperPrinter {
    private final PdfEngine engine;

    public PaperPrinter(PdfEngine engine) {
        this.engine = engine;
    }

    /** The paper as tagged PDF (PDF/UA-1), dated with its own day. */
    public Printed print(PaperText text, PaperFrame frame, Paper paper) {
        Instant dated = text.day().atStartOfDay().toInstant(ZoneOffset.UTC);
        return engine.print(PaperPage.of(text, frame, paper, words(text)), dated);
    }

    /** The paper as plain text. */
    public String text(PaperText text, PaperFrame frame) {
        return PaperPlain.of(text, frame, words(text));
    }

    private static Words words(PaperText text) {
        return Words.beside(PaperPrinter.class, text.language());
    }
}
