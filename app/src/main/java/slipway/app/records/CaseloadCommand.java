package slipway.app.records;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import slipway.app.console.BadInputException;
import slipway.app.console.ExitStatus;
import slipway.app.console.InputFiles;
import slipway.app.console.WholeFile;
import slipway.care.record.Act;
import slipway.care.record.access.Clinic;
import slipway.care.record.caseload.OutcomeAsk;
import slipway.care.record.caseload.OutcomeRow;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.exchange.tables.CaseloadArchive;
import slipway.exchange.tables.CaseloadTables;
import slipway.store.Store;

/** {@code slipway caseload}: the episodes of a clinic as tables without names. */
@Command(
        name = "caseload",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Writes episodes, visits, scores and reports of a clinic as CSV with a data dictionary: pseudonyms, ages in"
                    + " bands, the dates of each person moved by the same number of days.",
            "",
            "This is not anonymous: who knows a course can find it again. Episodes that are no whole case yet are left"
                    + " out and counted. The trail notes it."
        })
public final class CaseloadCommand implements Callable<Integer> {
    private static final int KEY_BYTES = 32;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private RecordsPlace place = new RecordsPlace();

    @Option(names = "--clinic", paramLabel = "ID", description = "The clinic; needed if there are several.")
    private Optional<String> clinicId = Optional.empty();

    @Option(
            names = "--out",
            required = true,
            paramLabel = "DIR",
            description = "Folder for the files; made if it is not there.")
    private Path folder = Path.of("");

    @Option(
            names = "--key-file",
            paramLabel = "FILE",
            description = {
                "A secret of 16 bytes or more: the same file gives the same pseudonyms and shifts again.",
                "Without it a key is made that nobody keeps."
            })
    private Optional<Path> keyFile = Optional.empty();

    @Override
    public Integer call() {
        byte[] key = keyFile.map(InputFiles::read).orElseGet(CaseloadCommand::newKey);
        try (Store store = place.open()) {
            Clinic clinic = RecordsPlace.clinic(store, clinicId);
            Act act = RecordsPlace.act("caseload", clinic.id());
            List<String> ids = store
                    .records()
                    .caseload()
                    .outcomes(
                            OutcomeAsk.first(
                                    Instant.EPOCH, act.at(), LocalDate.now(ZoneId.systemDefault()), OutcomeAsk.MOST),
                            act)
                    .stream()
                    .map(OutcomeRow::episodeId)
                    .toList();
            var archive = CaseloadArchive.of(store.records(), clinic, ids, act.at(), ZoneId.systemDefault(), act);
            write(archive, key);
            store.records().trail().note(Chain.ofClinic(clinic.id()), Action.EXPORT, "caseload", clinic.id(), act);
            tell(archive, ids.size() == OutcomeAsk.MOST);
        }
        return ExitStatus.OK;
    }

    private void write(CaseloadArchive archive, byte[] key) {
        var files = new LinkedHashMap<Path, byte[]>();
        try {
            CaseloadTables.of(archive.facts(), key)
                    .forEach((name, text) -> files.put(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8)));
        } catch (IllegalArgumentException e) {
            throw new BadInputException("slipway: --key-file: " + e.getMessage());
        }
        WholeFile.writeAll(files);
        files.keySet().forEach(spec.commandLine().getOut()::println);
    }

    private void tell(CaseloadArchive archive, boolean cut) {
        PrintWriter out = spec.commandLine().getOut();
        out.printf(
                "%d episodes; %d left out as no whole case; %d entries not understood%n",
                archive.facts().size(), archive.leftOut(), archive.notRead());
        if (cut) {
            out.printf("Only the newest %d episodes were looked at.%n", OutcomeAsk.MOST);
        }
        out.flush();
    }

    private static byte[] newKey() {
        byte[] key = new byte[KEY_BYTES];
        new SecureRandom().nextBytes(key);
        return key;
    }
}
