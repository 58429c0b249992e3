package slipway.app.records;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.app.console.BadInputException;
import slipway.app.console.DateOption;
import slipway.app.console.ExitStatus;
import slipway.app.console.InputFiles;
import slipway.care.codes.CodesFile;
import slipway.care.record.Saving;
import slipway.care.record.access.Clinic;
import slipway.care.record.codes.CodeFiles;
import slipway.care.record.codes.CodeLoad;
import slipway.care.record.trail.TrailForm;
import slipway.exercises.yaml.MistakesException;
import slipway.reasoning.codes.CodeChange;
import slipway.reasoning.codes.CodeEntry;
import slipway.reasoning.codes.CodeExclusion;
import slipway.reasoning.codes.CodeSet;
import slipway.reasoning.codes.DiagnosisCodes;
import slipway.store.Store;

/** {@code slipway codes}: the diagnosis codes of a clinic. */
@Command(
        name = "codes",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        subcommands = {CodesCommand.Load.class, CodesCommand.Show.class},
        synopsisSubcommandLabel = "COMMAND",
        description = {
            "Loads and lists the diagnosis codes of a clinic. For a day of service the clinic's own line comes first; for"
                    + " codes that it does not name, a small set that ships with the program.",
            "",
            "Whether official or licensed descriptions may be loaded is for the clinic to settle with their owner."
        })
public final class CodesCommand implements Runnable {
    private static final int SHA_LETTERS = 16;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** Without a command the help is the answer. */
    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    /** {@code slipway codes load}. */
    @Command(
            name = "load",
            mixinStandardHelpOptions = true,
            sortOptions = false,
            description = {
                "Shows what a file of codes would change, and loads it if --confirm gives the word that was shown. The file"
                        + " takes the place of the clinic's list as a whole; if it has a mistake, nothing changes.",
                "",
                "Columns: code,billable,side,validFrom,validTo,words,source. validTo is the first day of service for which"
                        + " the line no longer holds, and may be empty."
            })
    static final class Load implements Callable<Integer> {
        @Spec
        private CommandSpec spec = CommandSpec.create();

        @Parameters(paramLabel = "FILE", description = "Codes as CSV.")
        private Path file = Path.of("");

        @Mixin
        private RecordsPlace place = new RecordsPlace();

        @Option(names = "--clinic", paramLabel = "ID", description = "The clinic; needed if there are several.")
        private Optional<String> clinicId = Optional.empty();

        @Option(
                names = "--exclusions",
                paramLabel = "FILE",
                description = "Codes that exclude each other, as CSV: family,other,kind,source. Without it they stay.")
        private Optional<Path> exclusions = Optional.empty();

        @Option(names = "--confirm", paramLabel = "WORD", description = "Loads what was shown with this word.")
        private Optional<String> confirm = Optional.empty();

        @Override
        public Integer call() {
            PrintWriter out = spec.commandLine().getOut();
            try (Store store = place.open()) {
                Clinic clinic = RecordsPlace.clinic(store, clinicId);
                long version = store.records().codes().version(clinic.id());
                CodeSet now = store.records().codes().inUse(clinic.id());
                CodeSet next = read(now);
                String word = word(next, version);
                tell(out, now, next);
                if (confirm.isEmpty()) {
                    out.println("To load it: --confirm " + word);
                } else if (!confirm.get().equals(word)
                        || store.records()
                                        .codes()
                                        .load(CodeFiles.of(next), version, RecordsPlace.act("codes", clinic.id()))
                                instanceof Saving.Stale) {
                    throw new BadInputException(
                            "slipway: --confirm: not the word of this file and of the codes in use; look at it again");
                } else {
                    out.printf(
                            "loaded %d codes, %d exclusions%n",
                            next.entries().size(), next.exclusions().size());
                }
                out.flush();
            }
            return ExitStatus.OK;
        }

        /** Both files are read before anything is said, so that all mistakes are told at once. */
        private CodeSet read(CodeSet now) {
            var wrong = new ArrayList<String>();
            List<CodeEntry> codes = List.of();
            List<CodeExclusion> excluded = now.exclusions();
            try {
                codes = CodesFile.codes(file.toString(), InputFiles.read(file));
            } catch (MistakesException | BadInputException e) {
                wrong.add(String.valueOf(e.getMessage()));
            }
            try {
                if (exclusions.isPresent()) {
                    excluded = CodesFile.exclusions(exclusions.get().toString(), InputFiles.read(exclusions.get()));
                }
            } catch (MistakesException | BadInputException e) {
                wrong.add(String.valueOf(e.getMessage()));
            }
            if (!wrong.isEmpty()) {
                throw new BadInputException(String.join(System.lineSeparator(), wrong));
            }
            return new CodeSet(codes, excluded);
        }

        private static String word(CodeSet next, long version) {
            return TrailForm.sha256(version + "\n" + CodeFiles.of(next).sha256())
                    .substring(0, SHA_LETTERS);
        }

        private static void tell(PrintWriter out, CodeSet now, CodeSet next) {
            List<CodeChange> changes = CodeChange.between(now, next);
            for (CodeChange change : changes) {
                out.printf("%-9s  %s%n", word(change.kind()), line(change.line()));
            }
            Arrays.stream(CodeChange.Kind.values())
                    .forEach(kind -> out.printf(
                            "%d %s%n",
                            changes.stream().filter(each -> each.kind() == kind).count(), word(kind)));
            out.printf(
                    "%d exclusions, %s%n",
                    next.exclusions().size(), next.exclusions().equals(now.exclusions()) ? "as now" : "other than now");
        }

        private static String word(CodeChange.Kind kind) {
            return kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /** {@code slipway codes list}. */
    @Command(
            name = "list",
            mixinStandardHelpOptions = true,
            sortOptions = false,
            description =
                    "Prints who loaded the codes of a clinic and when, and the codes that may be billed for a day.")
    static final class Show implements Callable<Integer> {
        @Spec
        private CommandSpec spec = CommandSpec.create();

        @Mixin
        private RecordsPlace place = new RecordsPlace();

        @Option(names = "--clinic", paramLabel = "ID", description = "The clinic; needed if there are several.")
        private Optional<String> clinicId = Optional.empty();

        @Option(
                names = "--date",
                paramLabel = "DATE",
                converter = DateOption.class,
                description = "The day of service; default today.")
        private Optional<LocalDate> date = Optional.empty();

        @Override
        public Integer call() {
            PrintWriter out = spec.commandLine().getOut();
            try (Store store = place.open()) {
                Clinic clinic = RecordsPlace.clinic(store, clinicId);
                List<CodeLoad> loads = store.records().codes().loads(clinic.id());
                if (loads.isEmpty()) {
                    out.println("nothing loaded; the small set that ships with the program is in use");
                }
                loads.forEach(load -> out.printf(
                        "load %d  %s  by %s  %d codes, %d exclusions%n",
                        load.version(), load.at(), load.by(), load.codes(), load.exclusions()));
                DiagnosisCodes.of(store.records().codes().inUse(clinic.id()))
                        .list(date.orElseGet(LocalDate::now))
                        .forEach(entry -> out.println(line(entry)));
                out.flush();
            }
            return ExitStatus.OK;
        }
    }

    private static String line(CodeEntry entry) {
        return "%-8s  %-11s  from %s%s  %s (%s)"
                .formatted(
                        entry.code(),
                        entry.billable() ? entry.side().name().toLowerCase(Locale.ROOT) : "family",
                        entry.validFrom(),
                        entry.validTo().map(end -> " before " + end).orElse(""),
                        entry.words(),
                        entry.mark());
    }
}
