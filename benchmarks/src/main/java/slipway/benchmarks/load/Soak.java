package slipway.benchmarks.load;

import java.util.List;
import java.util.Locale;
import slipway.store.Store;

/**
 * A server under the load of an evening and a morning in turn for a long time. Prints its memory every half minute, so
 * that it can be seen whether it grows. Arguments: sqlite or postgres, people, therapists, at once, minutes.
 */
public final class Soak {
    private static final int TURN_SECONDS = 15;

    private Soak() {}

    /** Runs and prints CSV rows. */
    public static void main(String[] args) throws Exception {
        int therapists = Integer.parseInt(args[2]);
        int atOnce = Integer.parseInt(args[3]);
        int turns = Integer.parseInt(args[4]) * 60 / (2 * TURN_SECONDS);
        try (Places place = Places.of(args[0])) {
            List<String> codes = NetworkLoad.fill(place, Integer.parseInt(args[1]), therapists, 0);
            try (var server = new Measured(place, System.getProperty("bench.heap", "1g"))) {
                System.out.println("minutes,resident_mib,pages,wrong,processor_s");
                for (int turn = 1; turn <= turns; turn++) {
                    var load = new NetworkLoad(server.address);
                    load.evening(codes, atOnce, TURN_SECONDS);
                    load.morning(therapists, atOnce, TURN_SECONDS);
                    System.out.printf(
                            Locale.ROOT,
                            "%.1f,%d,%d,%d,%.0f%n",
                            turn * 2 * TURN_SECONDS / 60.0,
                            server.residentMib(),
                            load.count(),
                            load.wrong(),
                            server.processorSeconds());
                }
                System.out.printf("peak %d MiB%n", server.peakMib());
            }
            try (Store store = Store.open(place.settings())) {
                System.out.printf(
                        "trail intact: %s%n", store.records().trail().verify().isIntact());
            }
        }
    }
}
