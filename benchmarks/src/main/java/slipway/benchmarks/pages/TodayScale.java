package slipway.benchmarks.pages;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.Map;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.EpisodeState;
import slipway.care.record.person.PersonDetails;
import slipway.mechanics.body.Side;
import slipway.store.Store;
import slipway.store.StoreSettings;

/**
 * Today with 60 people in care, as closed episodes of others pile up in the same clinic. Prints one row per size: the
 * median of the query alone and of the whole page. Arguments: sizes in rising order.
 */
public final class TodayScale {
    private static final int IN_CARE = 60;
    private static final int ROUNDS = 200;
    private static final int WARM_UP = 2000;

    private final Records records;
    private final Act act;
    private int episodes;

    private TodayScale(Records records, Act act) {
        this.records = records;
        this.act = act;
    }

    /** Runs and prints. */
    public static void main(String[] sizes) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("slipway-today");
        try (Store store = Store.open(StoreSettings.inFolder(folder));
                SignedIn therapist = SignedIn.in(store, folder, Role.THERAPIST)) {
            measure(store.records(), therapist, sizes);
        }
    }

    private static void measure(Records records, SignedIn therapist, String[] sizes)
            throws IOException, InterruptedException {
        Act act = therapist.act();
        var scale = new TodayScale(records, act);
        for (int i = 0; i < IN_CARE; i++) {
            scale.episode(act.userId(), EpisodeState.OPEN);
        }
        // The first size must not pay for what the machine learns while it runs.
        for (int i = 0; i < WARM_UP; i++) {
            therapist.get("/today");
        }
        System.out.printf(Locale.ROOT, "episodes,query_ms,page_ms%n");
        for (String size : sizes) {
            while (scale.episodes < Integer.parseInt(size)) {
                scale.episode("somebody else", EpisodeState.CLOSED);
            }
            double query = SignedIn.median(ROUNDS, () -> records.caseload().today(act.userId(), 200, act));
            double page = SignedIn.median(ROUNDS, () -> therapist.get("/today"));
            System.out.printf(Locale.ROOT, "%d,%.2f,%.2f%n", scale.episodes, query, page);
        }
    }

    private void episode(String therapistId, EpisodeState state) {
        var details = PersonDetails.invented("Person " + episodes);
        Act then = act.at(act.at().minus(Duration.ofMinutes(episodes)));
        String personId = records.people().add(details, then).id();
        Chart chart = records.charts().begin(personId, Side.LEFT, therapistId, Map.of(), then);
        if (state != EpisodeState.OPEN) {
            chart.change(chart.episode().version(), Side.LEFT, therapistId, state)
                    .orThrow();
        }
        episodes++;
    }
}
