package slipway.app.records;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
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
import slipway.app.console.WholeFile;
import slipway.care.record.Act;
import slipway.care.record.access.Clinic;
import slipway.care.record.assembly.Assembly;
import slipway.care.record.assembly.CaseAssembly;
import slipway.care.record.caseload.PersonRow;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Episode;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.exercises.yaml.Mistake;
import slipway.store.Store;

/** {@code slipway export}: episodes out of the records as case files. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Writes episodes as case files, EPISODE.yaml each; one without --out to standard output. The trail notes it.",
            "",
            "An episode that is not a whole case yet is told with what is missing; then nothing is written."
        })
public final class ExportCommand implements Callable<Integer> {
    private static final int PAGE = 500;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(arity = "0..*", paramLabel = "EPISODE", description = "Ids of episodes.")
    private List<String> episodes = List.of();

    @Option(names = "--all", description = "All episodes of the clinic.")
    private boolean all;

    @Mixin
    private RecordsPlace place = new RecordsPlace();

    @Option(names = "--clinic", paramLabel = "ID", description = "The clinic; needed if there are several.")
    private Optional<String> clinicId = Optional.empty();

    @Option(names = "--out", paramLabel = "DIR", description = "Folder for the files; made if it is not there.")
    private Optional<Path> folder = Optional.empty();

    @Option(
            names = "--date",
            paramLabel = "DATE",
            converter = DateOption.class,
            description = "The day for which ages are told; default today.")
    private Optional<LocalDate> date = Optional.empty();

    @Override
    public Integer call() {
        if (all != episodes.isEmpty()) {
            throw new BadInputException("slipway: name episodes, or give --all");
        }
        if (folder.isEmpty() && (all || episodes.size() > 1)) {
            throw new BadInputException("slipway: several episodes need a folder: --out DIR");
        }
        try (Store store = place.open()) {
            Clinic clinic = RecordsPlace.clinic(store, clinicId);
            Act act = RecordsPlace.act("export", clinic.id());
            Map<Episode, String> texts = texts(store, clinic, all ? allOf(store, act) : episodes, act);
            write(texts);
            texts.keySet()
                    .forEach(episode -> store.records()
                            .trail()
                            .note(Chain.ofPerson(episode.personId()), Action.EXPORT, "episode", episode.id(), act));
        }
        return ExitStatus.OK;
    }

    private static List<String> allOf(Store store, Act act) {
        var ids = new ArrayList<String>();
        String after = "";
        for (boolean more = true; more; ) {
            List<PersonRow> page = store.records().caseload().people("", after, PAGE, act);
            for (PersonRow person : page) {
                store.records().charts().ofPerson(person.personId(), act).forEach(episode -> ids.add(episode.id()));
                after = person.afterKey();
            }
            more = page.size() == PAGE;
        }
        return ids;
    }

    private Map<Episode, String> texts(Store store, Clinic clinic, List<String> ids, Act act) {
        var texts = new LinkedHashMap<Episode, String>();
        var wrong = new ArrayList<String>();
        for (String id : ids) {
            Optional<Chart> chart = store.records().charts().open(id, act).chartIfOpen();
            Optional<Episode> episode =
                    chart.map(Chart::episode).filter(found -> found.clinicId().equals(clinic.id()));
            if (episode.isEmpty()) {
                wrong.add("slipway: the clinic has no episode " + id);
                continue;
            }
            Assembly assembly = CaseAssembly.of(chart.get(), clinic, date.orElseGet(LocalDate::now));
            if (assembly instanceof Assembly.Incomplete incomplete) {
                wrong.add(missing(id, incomplete));
            } else {
                texts.put(episode.get(), assembly.complete().orElseThrow().text());
            }
        }
        if (!wrong.isEmpty()) {
            throw new BadInputException(String.join(System.lineSeparator(), wrong));
        }
        return texts;
    }

    private static String missing(String id, Assembly.Incomplete incomplete) {
        var lines = new ArrayList<String>();
        for (Mistake mistake : incomplete.mistakes()) {
            lines.add("%s: %s: %s".formatted(id, mistake.path(), mistake.message()));
        }
        for (Mistake absent : incomplete.missing()) {
            lines.add("%s: %s: is missing".formatted(id, absent.path()));
        }
        return String.join(System.lineSeparator(), lines);
    }

    private void write(Map<Episode, String> texts) {
        PrintWriter out = spec.commandLine().getOut();
        if (folder.isEmpty()) {
            texts.values().forEach(out::print);
            out.flush();
            return;
        }
        var files = new LinkedHashMap<Path, byte[]>();
        texts.forEach((episode, text) ->
                files.put(folder.get().resolve(episode.id() + ".yaml"), text.getBytes(StandardCharsets.UTF_8)));
        WholeFile.writeAll(files);
        files.keySet().forEach(out::println);
        out.flush();
    }
}
