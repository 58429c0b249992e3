package slipway.app.records;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;
import slipway.app.console.BadInputException;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Clinic;
import slipway.store.Store;
import slipway.store.StoreSettings;

/** Where the records are: the options of every command that works on them. */
public final class RecordsPlace {
    /** Environment variables of a PostgreSQL server's user; never on the command line, which others can read. */
    private static final String USER = "SLIPWAY_DATABASE_USER";

    private static final String PASSWORD = "SLIPWAY_DATABASE_PASSWORD";

    @Option(names = "--data", required = true, paramLabel = "FOLDER", description = "Folder of the records.")
    private Path data = Path.of("");

    @Option(
            names = "--database",
            paramLabel = "URL",
            description = {
                "A PostgreSQL server instead of the file in the folder: jdbc:postgresql://host/name.",
                "User and password come from " + USER + " and " + PASSWORD + "."
            })
    private Optional<String> database = Optional.empty();

    /** The folder. */
    public Path folder() {
        return data;
    }

    /** How the records are reached. */
    public StoreSettings settings() {
        try {
            return database.map(url -> StoreSettings.postgres(url, environment(USER), environment(PASSWORD)))
                    .orElseGet(() -> StoreSettings.inFolder(data));
        } catch (IllegalArgumentException e) {
            throw new BadInputException("slipway: " + e.getMessage());
        }
    }

    /**
     * Opens records that are there.
     *
     * @throws BadInputException if the folder holds none
     */
    public Store open() {
        if (database.isEmpty() && !Files.isRegularFile(data.resolve(StoreSettings.FILE))) {
            throw new BadInputException(
                    "slipway: %s holds no records (no file %s)".formatted(data, StoreSettings.FILE));
        }
        return Store.open(settings());
    }

    /** Opens records, and makes them if there are none. */
    public Store openOrMake() {
        return Store.open(settings());
    }

    private static String environment(String name) {
        return Optional.ofNullable(System.getenv(name)).orElse("");
    }

    /**
     * The clinic meant.
     *
     * @param id of the clinic; may be left out if there is only one
     * @throws BadInputException if there is no such clinic, or several to choose from
     */
    public static Clinic clinic(Store store, Optional<String> id) {
        List<Clinic> all = store.records().clinics().list();
        List<Clinic> meant = all.stream()
                .filter(clinic -> id.isEmpty() || clinic.id().equals(id.get()))
                .toList();
        if (meant.size() == 1) {
            return meant.get(0);
        }
        String known = all.stream()
                .map(clinic -> "%n  %s  %s".formatted(clinic.id(), clinic.name()))
                .collect(Collectors.joining());
        throw new BadInputException(id.map(wrong -> "slipway: --clinic: there is no clinic " + wrong)
                        .orElse("slipway: the records hold %d clinics; name one with --clinic".formatted(all.size()))
                + known);
    }

    /** An act of the program itself. */
    public static Act act(String word, String clinicId) {
        return new Act(word, Role.PROGRAM, clinicId, Instant.now());
    }
}
