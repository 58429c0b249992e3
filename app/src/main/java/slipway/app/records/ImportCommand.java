package slipway.app.records;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Clinic;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.assembly.CaseImport;
import slipway.care.record.assembly.CaseSplit;
import slipway.exercises.yaml.MistakesException;
import slipway.store.Store;

/** {@code slipway import}: case files into the records. */
@Command(
        name = "import",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Puts case files into the records: each becomes a person with one episode, with nothing lost but the comments"
                    + " of the file. Prints the id of each episode.",
            "",
            "All files are read before the first is put in: if one has a mistake, nothing changes."
        })
public final class ImportCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "1..*", paramLabel = "CASE", description = "Case files.")
    private List<Path> files = List.of();

    @Mixin
    private RecordsPlace place = new RecordsPlace();

    @Option(names = "--clinic", paramLabel = "ID", description = "The clinic; needed if there are several.")
    private Optional<String> clinicId = Optional.empty();

    @Option(
            names = "--new-clinic",
            paramLabel = "NAME",
            description = {
                "Make a clinic of this name in records that have none; the rest as the first case says.",
                "It has no accounts. For records with pages start 'slipway serve' first: it sets up clinic and account."
            })
    private Optional<String> newClinic = Optional.empty();

    @Option(
            names = "--therapist",
            paramLabel = "LOGIN",
            description = "Who is in charge; needed if the clinic has several therapists.")
    private Optional<String> therapist = Optional.empty();

    @Option(
            names = "--date",
            paramLabel = "DATE",
            converter = DateOption.class,
            description = "The day on which the ages were told; default today.")
    private Optional<LocalDate> date = Optional.empty();

    @Override
    public Integer call() {
        Map<Path, CaseSplit> cases = read();
        PrintWriter out = spec.commandLine().getOut();
        try (Store store = newClinic.isPresent() ? place.openOrMake() : place.open()) {
            Clinic clinic = newClinic
                    .map(name -> make(store, name, cases.values().iterator().next()))
                    .orElseGet(() -> RecordsPlace.clinic(store, clinicId));
            String inCharge = therapist(store, clinic);
            cases.forEach((file, read) -> {
                out.printf("%s  %s%n", put(store, clinic, inCharge, read), file);
                out.flush();
            });
        }
        return ExitStatus.OK;
    }

    private Map<Path, CaseSplit> read() {
        var cases = new LinkedHashMap<Path, CaseSplit>();
        var wrong = new ArrayList<String>();
        for (Path file : files) {
            try {
                cases.put(file, CaseSplit.read(InputFiles.read(file), file.toString(), date.orElseGet(LocalDate::now)));
            } catch (MistakesException | BadInputException e) {
                wrong.add(String.valueOf(e.getMessage()));
            }
        }
        if (!wrong.isEmpty()) {
            throw new BadInputException(String.join(System.lineSeparator(), wrong));
        }
        return cases;
    }

    private static Clinic make(Store store, String name, CaseSplit first) {
        if (!store.records().clinics().list().isEmpty()) {
            throw new BadInputException("slipway: --new-clinic: the records have a clinic already");
        }
        try {
            return NewClinic.like(first, name, store.records().clinics());
        } catch (IllegalArgumentException e) {
            throw new BadInputException("slipway: --new-clinic: " + e.getMessage());
        }
    }

    private String therapist(Store store, Clinic clinic) {
        List<StaffAccount> all = store.records().staff().list(clinic.id()).stream()
                .filter(account -> account.active() && account.roles().contains(Role.THERAPIST))
                .toList();
        if (all.isEmpty() && therapist.isEmpty()) {
            return "import";
        }
        List<StaffAccount> meant = all.stream()
                .filter(account -> therapist.isEmpty() || account.login().equals(therapist.get()))
                .toList();
        if (meant.size() != 1) {
            throw new BadInputException(therapist
                    .map(login -> "slipway: --therapist: the clinic has no therapist " + login)
                    .orElse("slipway: the clinic has %d therapists; name one with --therapist".formatted(all.size())));
        }
        return meant.get(0).id();
    }

    private static String put(Store store, Clinic clinic, String inCharge, CaseSplit read) {
        Act act = RecordsPlace.act("import", clinic.id());
        return CaseImport.put(store.records(), read, inCharge, act).episode().id();
    }
}
