package slipway.app.records;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import slipway.app.console.BadInputException;
import slipway.app.console.ExitStatus;
import slipway.care.record.trail.TrailReport;
import slipway.store.Store;

/** {@code slipway audit}: the trail. */
@Command(
        name = "audit",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        subcommands = AuditCommand.Verify.class,
        synopsisSubcommandLabel = "COMMAND",
        description = {
            "Works on the trail: who did what and when, with what was there before and after.",
            "",
            "The trail is a chain of digests per person and per clinic, so that a change behind the program's back shows."
        })
public final class AuditCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** Without a command the help is the answer. */
    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    /** {@code slipway audit verify}. */
    @Command(
            name = "verify",
            mixinStandardHelpOptions = true,
            sortOptions = false,
            description = {
                "Checks the chain of digests of every person and clinic, and says where one does not hold.",
                "",
                "The last line is a digest of the newest entries. Kept elsewhere and given as --expect while nobody works,"
                        + " it also shows a trail that somebody with access to the database has rebuilt as a whole."
            })
    static final class Verify implements Callable<Integer> {
        @Spec
        private CommandSpec spec = CommandSpec.create();

        @Mixin
        private RecordsPlace place = new RecordsPlace();

        @Option(names = "--expect", paramLabel = "DIGEST", description = "The digest that must come out.")
        private Optional<String> expected = Optional.empty();

        @Override
        public Integer call() {
            if (expected.filter(digest -> !digest.matches("[0-9a-f]{64}")).isPresent()) {
                throw new BadInputException("slipway: --expect must be 64 digits 0-9a-f");
            }
            PrintWriter out = spec.commandLine().getOut();
            try (Store store = place.open()) {
                TrailReport report = store.records().trail().verify();
                report.breaks().forEach(found -> out.println("BROKEN  " + found));
                boolean asExpected = expected.map(report.headsDigest()::equals).orElse(true);
                if (!asExpected) {
                    out.println("CHANGED since the digest was taken");
                }
                out.printf(
                        "%d chains, %d entries, %s%n",
                        report.chains(),
                        report.entries(),
                        report.isIntact() ? "all hold" : report.breaks().size() + " do not hold");
                out.println(report.headsDigest());
                out.flush();
                return report.isIntact() && asExpected ? ExitStatus.OK : ExitStatus.DAMAGE;
            }
        }
    }
}
