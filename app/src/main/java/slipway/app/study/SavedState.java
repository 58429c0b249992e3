package slipway.app.study;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import slipway.app.console.BadInputException;
import slipway.app.console.WholeFile;
import slipway.study.report.StateJson;
import slipway.study.run.StudyPlan;
import slipway.study.run.StudyState;

/** The state of an unfinished run, in the folder of its results. */
final class SavedState {
    private static final String NAME = "unfinished.json";

    private final Path file;

    SavedState(Path folder) {
        file = folder.resolve(NAME);
    }

    Path file() {
        return file;
    }

    /**
     * The saved state of this plan, or the beginning if nothing is saved.
     *
     * @throws BadInputException if what is saved belongs to another run
     */
    StudyState load(StudyPlan plan) {
        if (!Files.exists(file)) {
            return new StudyState(plan);
        }
        try {
            return StateJson.read(plan, Files.readString(file));
        } catch (IllegalArgumentException e) {
            throw new BadInputException(
                    "%s: %s; choose another folder or remove that file".formatted(file, e.getMessage()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void save(StudyState state) {
        WholeFile.write(file, StateJson.of(state).getBytes(StandardCharsets.UTF_8));
    }

    void remove() {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
