package slipway.app.exchange;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slipway.app.console.BadInputException;
import slipway.app.console.ExitStatus;
import slipway.app.console.InputFiles;
import slipway.app.records.RecordsPlace;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.Saving;
import slipway.care.record.access.Clinic;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.chart.Chart;
import slipway.exchange.fhir.Referral;
import slipway.exchange.fhir.RefusedException;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Side;
import slipway.reasoning.codes.DiagnosisCodes;
import slipway.store.Store;

/** {@code slipway fhir take}. */
@Command(
        name = "take",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Takes a FHIR R4 bundle (JSON) over into the records: person, diagnoses, referral, scores; as a new person, or"
                    + " into an episode that is there. All of it is taken or nothing.",
            "",
            "Without --confirm it only shows what would change, and the word that confirms exactly that. When the bundle or"
                    + " the records have changed since, the word does not fit any more and nothing is taken."
        })
final class FhirTakeCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "BUNDLE.json", description = "The bundle.")
    private Path bundle = Path.of("");

    @Mixin
    private RecordsPlace place = new RecordsPlace();

    @ArgGroup(multiplicity = "1")
    private Where where = new Where();

    /** As a new person, or into an episode. */
    static final class Where {
        @Option(
                names = "--new",
                paramLabel = "SIDE",
                description = "As a new person with symptoms on this side: left or right. No bundle tells it reliably.")
        private Optional<Side> side = Optional.empty();

        @Option(names = "--into", paramLabel = "EPISODE", description = "Into this episode.")
        private Optional<String> episode = Optional.empty();
    }

    @Option(names = "--clinic", paramLabel = "ID", description = "The clinic; needed if there are several.")
    private Optional<String> clinicId = Optional.empty();

    @Option(names = "--therapist", paramLabel = "LOGIN", description = "Who is in charge of a new person.")
    private Optional<String> therapist = Optional.empty();

    @Option(
            names = "--language",
            paramLabel = "CODE",
            description = "What a new person reads in: en or es; default en.")
    private Optional<String> language = Optional.empty();

    @Option(names = "--confirm", paramLabel = "WORD", description = "Takes over what was shown with this word.")
    private Optional<String> confirm = Optional.empty();

    @Override
    public Integer call() {
        byte[] text = InputFiles.read(bundle);
        try (Store store = place.open()) {
            Clinic clinic = RecordsPlace.clinic(store, clinicId);
            Act act = RecordsPlace.act("fhir", clinic.id());
            Optional<Chart> chart = where.episode.map(id -> chart(store.records(), clinic, id, act));
            var codes = DiagnosisCodes.of(store.records().codes().inUse(clinic.id()));
            Referral referral = chart.map(open -> Referral.into(open, text, codes))
                    .orElseGet(() -> Referral.ofNewPerson(text, codes));
            PrintWriter out = spec.commandLine().getOut();
            PreviewText.print(referral.preview(), out);
            if (confirm.isEmpty()) {
                out.println("To take it over: --confirm " + referral.state());
            } else if (!confirm.get().equals(referral.state())) {
                throw stale();
            } else {
                out.println("taken over into episode " + take(store.records(), clinic, referral, chart, act));
            }
            out.flush();
        } catch (RefusedException e) {
            throw new BadInputException(bundle + ": " + e.getMessage());
        }
        return ExitStatus.OK;
    }

    private static BadInputException stale() {
        return new BadInputException(
                "slipway: --confirm: this is not what was shown with that word; nothing was taken");
    }

    private String take(Records records, Clinic clinic, Referral referral, Optional<Chart> chart, Act act) {
        if (chart.isPresent()) {
            if (!referral.preview().changes()) {
                return chart.get().episode().id();
            }
            if (referral.take() instanceof Saving.Stale) {
                throw stale();
            }
            return chart.get().episode().id();
        }
        Language reads = language.map(code -> Language.find(code.toLowerCase(Locale.ROOT))
                        .orElseThrow(() -> new BadInputException("slipway: --language: en or es, was " + code)))
                .orElse(Language.EN);
        return referral.takeAsNew(
                        records, where.side.orElseThrow(), reads, clinic.demo(), inCharge(records, clinic), act)
                .episode()
                .id();
    }

    private static Chart chart(Records records, Clinic clinic, String id, Act act) {
        return records.charts()
                .open(id, act)
                .chartIfOpen()
                .filter(open -> open.episode().clinicId().equals(clinic.id()))
                .orElseThrow(() -> new BadInputException("slipway: --into: the clinic has no episode " + id));
    }

    private String inCharge(Records records, Clinic clinic) {
        List<StaffAccount> meant = records.staff().list(clinic.id()).stream()
                .filter(account -> account.active() && account.roles().contains(Role.THERAPIST))
                .filter(account -> therapist.isEmpty() || account.login().equals(therapist.get()))
                .toList();
        if (meant.size() != 1) {
            throw new BadInputException(
                    "slipway: %d therapists could be meant; name one with --therapist".formatted(meant.size()));
        }
        return meant.get(0).id();
    }
}
