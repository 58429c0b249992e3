package slipway.documents.pdf;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.stream.Collectors;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Asks veraPDF, the validator of the PDF Association, whether a file keeps the rules of PDF/UA-1 (ISO 14289-1). */
public final class PdfUa {
    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    private PdfUa() {}

    /** Every broken rule with its clause and place; empty if the file complies. */
    public static List<String> violations(byte[] pdf) throws Exception {
        try (PDFAParser parser =
                        Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
            ValidationResult result = validator.validate(parser);
            List<String> broken = result.getTestAssertions().stream()
                    .filter(check -> check.getStatus() == TestAssertion.Status.FAILED)
                    .map(check -> "%s: %s".formatted(check.getRuleId().getClause(), check.getMessage()))
                    .distinct()
                    .collect(Collectors.toList());
            if (broken.isEmpty() && !result.isCompliant()) {
                broken.add("not compliant, no rule named");
            }
            return broken;
        }
    }
}
