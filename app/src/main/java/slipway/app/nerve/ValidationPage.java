package slipway.app.nerve;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import slipway.app.console.BadInputException;
import slipway.app.console.InputFiles;

/** The page whose hand-written text stands around the generated part. */
final class ValidationPage {
    static final String NAME = "validation.md";
    static final String BEGIN = "<!-- written by \"slipway validate\" from here -->";
    static final String END = "<!-- to here; the rest of the page is written by hand -->";

    private ValidationPage() {}

    /**
     * The page with its generated part replaced; a page of that part alone where there was none.
     *
     * @throws BadInputException if there is a page without the two marks, each once and in order
     */
    static String with(Path file, String generated) {
        String section = BEGIN + "\n\n" + generated.strip() + "\n\n" + END;
        if (Files.notExists(file)) {
            return "# Validation of the nerve model\n\n" + section + "\n";
        }
        String page = new String(InputFiles.read(file), StandardCharsets.UTF_8);
        int begin = page.indexOf(BEGIN);
        int end = page.indexOf(END);
        if (begin < 0 || end < begin || page.lastIndexOf(BEGIN) != begin || page.lastIndexOf(END) != end) {
            throw new BadInputException(file + ": must hold the two lines that bound the generated part, once each:\n  "
                    + BEGIN + "\n  " + END);
        }
        return page.substring(0, begin) + section + page.substring(end + END.length());
    }
}
