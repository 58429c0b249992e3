package slipway.app.records;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.app.console.BadInputException;
import slipway.app.console.ExitStatus;
import slipway.app.console.WholeFile;
import slipway.care.record.Act;
import slipway.care.record.access.Clinic;
import slipway.care.record.person.Person;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.exchange.person.PersonArchive;
import slipway.store.Store;

/** {@code slipway person}: what a person may ask of whoever keeps a record of them. */
@Command(
        name = "person",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        subcommands = {PersonCommand.Export.class, PersonCommand.Erase.class, PersonCommand.Retention.class},
        synopsisSubcommandLabel = "COMMAND",
        description = {
            "Gives out all that is kept of one person, erases a person, or finds those whose time of keeping is over.",
            "",
            "Ids of people stand in the address of their page. The trail notes each of these, and stays whole."
        })
public final class PersonCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** Without a command the help is the answer. */
    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    private static Person find(Store store, String id, Act act) {
        return store.records()
                .people()
                .find(id, act)
                .filter(person -> person.clinicId().equals(act.clinicId()))
                .orElseThrow(() -> new BadInputException("slipway: the clinic has no person " + id));
    }

    /** {@code slipway person export}. */
    @Command(
            name = "export",
            mixinStandardHelpOptions = true,
            sortOptions = false,
            description =
                    "Writes everything that is kept of a person into one archive: record.json, the same as CSV tables"
                            + " with a data dictionary, and the documents.")
    static final class Export implements Callable<Integer> {
        @Spec
        private CommandSpec spec = CommandSpec.create();

        @Parameters(paramLabel = "PERSON", description = "Id of the person.")
        private String id = "";

        @Mixin
        private RecordsPlace place = new RecordsPlace();

        @Option(names = "--clinic", paramLabel = "ID", description = "The clinic; needed if there are several.")
        private Optional<String> clinicId = Optional.empty();

        @Option(names = "--out", required = true, paramLabel = "FILE", description = "The archive, a zip file.")
        private Path file = Path.of("");

        @Override
        public Integer call() {
            try (Store store = place.open()) {
                Act act = RecordsPlace.act(
                        "export", RecordsPlace.clinic(store, clinicId).id());
                Person person = find(store, id, act);
                WholeFile.write(file, PersonArchive.of(store.records(), person, act));
                store.records().trail().note(Chain.ofPerson(id), Action.EXPORT, "person", id, act);
                PrintWriter out = spec.commandLine().getOut();
                out.println(file);
                out.flush();
            }
            return ExitStatus.OK;
        }
    }

    /** {@code slipway person erase}. */
    @Command(
            name = "erase",
            mixinStandardHelpOptions = true,
            sortOptions = false,
            description = {
                "Erases what names or describes a person, for good. Ids, times and digests stay, so that the trail still"
                        + " verifies.",
                "",
                "Backups that were made before still hold the person: delete them, or let them age out, and erase again"
                        + " after bringing one back."
            })
    static final class Erase implements Callable<Integer> {
        @Spec
        private CommandSpec spec = CommandSpec.create();

        @Parameters(paramLabel = "PERSON", description = "Id of the person.")
        private String id = "";

        @Mixin
        private RecordsPlace place = new RecordsPlace();

        @Option(names = "--clinic", paramLabel = "ID", description = "The clinic; needed if there are several.")
        private Optional<String> clinicId = Optional.empty();

        @Option(
                names = "--reason",
                required = true,
                paramLabel = "TEXT",
                description = "Why, without the person's name; it is kept.")
        private String reason = "";

        @Option(names = "--for-good", description = "Needed: nothing brings the person back.")
        private boolean forGood;

        @Override
        public Integer call() {
            if (!forGood) {
                throw new BadInputException("slipway: --for-good is needed: nothing brings an erased person back");
            }
            try (Store store = place.open()) {
                Act act = RecordsPlace.act(
                        "erase", RecordsPlace.clinic(store, clinicId).id());
                find(store, id, act);
                store.records().people().erase(id, reason, act);
                PrintWriter out = spec.commandLine().getOut();
                out.printf("%s erased; backups made before still hold the person%n", id);
                out.flush();
            } catch (IllegalArgumentException e) {
                throw new BadInputException("slipway: --reason: " + e.getMessage());
            }
            return ExitStatus.OK;
        }
    }

    /** {@code slipway person retention}. */
    @Command(
            name = "retention",
            mixinStandardHelpOptions = true,
            sortOptions = false,
            description = {
                "Lists the people whose time of keeping is over: all episodes closed, and nothing written for so many"
                        + " years. With --erase it erases them.",
                "",
                "The law sets the years, and longer ones for children; the program does not know them. The clinic's"
                        + " setting retention.years holds unless --years is given."
            })
    static final class Retention implements Callable<Integer> {
        /** Key of the clinic's setting. */
        static final String SETTING = "retention.years";

        private static final int PAGE = 500;
        private static final int MOST_YEARS = 200;

        @Spec
        private CommandSpec spec = CommandSpec.create();

        @Mixin
        private RecordsPlace place = new RecordsPlace();

        @Option(names = "--clinic", paramLabel = "ID", description = "The clinic; needed if there are several.")
        private Optional<String> clinicId = Optional.empty();

        @Option(names = "--years", paramLabel = "N", description = "Years since something was last written.")
        private Optional<String> given = Optional.empty();

        @Option(names = "--erase", description = "Erase them, for good.")
        private boolean erase;

        @Override
        public Integer call() {
            try (Store store = place.open()) {
                Clinic clinic = RecordsPlace.clinic(store, clinicId);
                String years = given.orElseGet(() -> store.records()
                        .clinics()
                        .setting(clinic.id(), SETTING, "")
                        .value());
                Act act = RecordsPlace.act("retention", clinic.id());
                tell(store, act, ago(act.at(), years), years);
            }
            return ExitStatus.OK;
        }

        private static Instant ago(Instant now, String years) {
            if (!years.matches("[0-9]{1,3}") || Integer.parseInt(years) < 1 || Integer.parseInt(years) > MOST_YEARS) {
                throw new BadInputException(
                        "slipway: give --years, or set %s: 1 to %d, was \"%s\"".formatted(SETTING, MOST_YEARS, years));
            }
            return now.atZone(ZoneOffset.UTC)
                    .minusYears(Integer.parseInt(years))
                    .toInstant();
        }

        private void tell(Store store, Act act, Instant before, String years) {
            PrintWriter out = spec.commandLine().getOut();
            String after = "";
            for (boolean more = true; more; ) {
                List<String> page = store.records().people().untouchedSince(before, after, PAGE, act);
                for (String id : page) {
                    if (erase) {
                        store.records().people().erase(id, "kept for %s years".formatted(years), act);
                    }
                    out.println(id);
                    after = id;
                }
                out.flush();
                more = page.size() == PAGE;
            }
        }
    }
}
