package slipway.app.locate;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.function.Consumer;
import slipway.app.console.BadInputException;
import slipway.app.console.InputFiles;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.CaseFiles;
import slipway.care.reports.CaseMistakes;
import slipway.care.reports.PublishedCase;
import slipway.care.reports.PublishedCases;

/** A file that holds one person or a list of published cases. */
final class CaseInput {
    private final Path file;
    private final byte[] bytes;
    private final boolean list;

    private CaseInput(Path file, byte[] bytes, boolean list) {
        this.file = file;
        this.bytes = bytes;
        this.list = list;
    }

    static CaseInput read(Path file) {
        byte[] bytes = InputFiles.read(file);
        try {
            return new CaseInput(file, bytes, PublishedCases.isList(new ByteArrayInputStream(bytes)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whether it is a list of cases rather than one person. */
    boolean isList() {
        return list;
    }

    CaseFile person() {
        return CaseFiles.read(bytes, file.toString());
    }

    /**
     * Number of cases, after the whole list was checked: nothing is answered for a list that holds a mistake.
     *
     * @throws BadInputException with all mistakes
     */
    int checkedCount() {
        int[] count = new int[1];
        forEach(each -> count[0]++);
        return count[0];
    }

    /** Hands over one case after another. */
    void forEach(Consumer<PublishedCase> taker) {
        try {
            PublishedCases.read(file.toString(), new ByteArrayInputStream(bytes), taker);
        } catch (CaseMistakes e) {
            throw new BadInputException(String.valueOf(e.getMessage()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
