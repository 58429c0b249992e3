package slipway.benchmarks.pages;

import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import slipway.benchmarks.load.Places;
import slipway.care.caseload.CaseloadFigures;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.store.Store;

/**
 * The figures of a caseload as its episodes of the last two years grow. Prints one row per size: how many seconds working
 * them out takes, the median of the page, and memory. Arguments: sqlite or postgres, then sizes in rising order.
 */
public final class CaseloadScale {
    private static final String PAGE = "/clinic/caseload";
    private static final int ROUNDS = 200;
    private static final int WARM_UP = 1000;
    private static final int WORKINGS = 3;

    private CaseloadScale() {}

    /** Runs and prints. */
    public static void main(String[] args) throws Exception {
        try (Places place = Places.of(args[0]);
                Store store = Store.open(place.settings());
                SignedIn lead = SignedIn.in(store, place.folder(), Role.LEAD)) {
            for (int i = 0; i < WARM_UP; i++) {
                lead.get(PAGE);
            }
            System.out.printf(Locale.ROOT, "database,episodes,worked_out_s,page_ms,heap_MB%n");
            int filled = 0;
            for (int i = 1; i < args.length; i++) {
                int size = Integer.parseInt(args[i]);
                Instant now = Instant.now().truncatedTo(ChronoUnit.MICROS);
                CaseloadFiller.fill(store, lead.act().clinicId(), filled, size, now);
                filled = size;
                measure(args[0], store, lead, now);
            }
        }
    }

    private static void measure(String database, Store store, SignedIn lead, Instant now) throws Exception {
        Act act = lead.act().at(now);
        double[] worked = SignedIn.millis(
                WORKINGS, () -> CaseloadFigures.workOut(store.records().caseload(), ZoneId.systemDefault(), act));
        int episodes = CaseloadFigures.current(store.records().caseload(), ZoneId.systemDefault(), act)
                .report()
                .episodes();
        double page = SignedIn.median(ROUNDS, () -> lead.get(PAGE));
        System.gc();
        long heap = Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
        System.out.printf(
                Locale.ROOT, "%s,%d,%.2f,%.2f,%d%n", database, episodes, worked[WORKINGS / 2] / 1e3, page, heap >> 20);
    }
}
