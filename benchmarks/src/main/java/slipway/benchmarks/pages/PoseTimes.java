package slipway.benchmarks.pages;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import slipway.care.record.Role;
import slipway.store.Store;
import slipway.store.StoreSettings;

/**
 * How long the server takes for one pose of the bench, from the question of the page to the whole answer, over a
 * connection of the same machine: while a joint is dragged (the questions that the page's script sends then), and when it rests
 * (all draws and the load ruler). Prints the rows of a Markdown table.
 */
public final class PoseTimes {
    private static final int ROUNDS = 2000;
    private static final int RESTING_ROUNDS = 400;
    private static final int WARM_UP = 3;
    private static final long SEED = 12;
    private static final String PAGE = "&ground=light&width=760";

    /** A joint of the leg, and how far it is dragged there and back. */
    private record Drag(String position, String joint, double lowDeg, double highDeg, double stepDeg) {}

    private static final List<Drag> DRAGS = List.of(
            new Drag("lying", "hip", 0, 90, 1.5),
            new Drag("lying", "ankle", -20, 15, 1),
            new Drag("sitting", "knee", 0, 90, 2),
            new Drag("long sitting", "spine", 0, 40, 1));

    private PoseTimes() {}

    /** Runs and prints. */
    public static void main(String[] args) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("slipway-poses");
        try (Store store = Store.open(StoreSettings.inFolder(folder));
                SignedIn therapist = SignedIn.in(store, folder, Role.THERAPIST)) {
            System.out.println("| server time of a pose, ms | median | 95 of 100 | 99 of 100 | target |");
            System.out.println("| --- | --- | --- | --- | --- |");
            tell("dragged in small steps", "< 10 (95 of 100)", times(therapist, dragged(), ROUNDS));
            tell("far from the last one", "", times(therapist, jumps(), ROUNDS));
            tell("at rest, all draws and the load ruler", "", times(therapist, resting(), RESTING_ROUNDS));
        }
    }

    private static List<String> dragged() {
        var poses = new ArrayList<String>();
        for (Drag drag : DRAGS) {
            int steps = (int) Math.round((drag.highDeg() - drag.lowDeg()) / drag.stepDeg());
            for (int i = 0; i < 2 * steps; i++) {
                double deg = drag.lowDeg() + drag.stepDeg() * (i < steps ? i : 2 * steps - i);
                poses.add(query(drag.position(), drag.joint(), deg) + PAGE + "&draws=few&drag=" + drag.joint());
            }
        }
        return poses;
    }

    private static List<String> jumps() {
        var random = new Random(SEED);
        var poses = new ArrayList<String>();
        for (int i = 0; i < ROUNDS; i++) {
            poses.add("position=lying&hip=%d&knee=%d&ankle=%d"
                            .formatted(random.nextInt(90), random.nextInt(100), random.nextInt(35) - 20)
                    + PAGE
                    + "&draws=few");
        }
        return poses;
    }

    private static List<String> resting() {
        return dragged().stream()
                .map(pose -> pose.replaceFirst("&draws=few.*", ""))
                .toList();
    }

    private static String query(String position, String joint, double deg) {
        return String.format(Locale.ROOT, "position=%s&%s=%.1f", position.replace(" ", "+"), joint, deg);
    }

    /** In rising order. */
    private static double[] times(SignedIn therapist, List<String> poses, int rounds)
            throws IOException, InterruptedException {
        int[] next = {0};
        SignedIn.Task task = () -> therapist.get("/bench/answer?" + poses.get(next[0]++ % poses.size()));
        for (int i = 0; i < WARM_UP; i++) {
            SignedIn.millis(rounds, task);
        }
        return SignedIn.millis(rounds, task);
    }

    private static void tell(String what, String target, double[] millis) {
        System.out.printf(
                Locale.ROOT,
                "| %s | %.1f | %.1f | %.1f | %s |%n",
                what,
                millis[millis.length / 2],
                millis[millis.length * 95 / 100],
                millis[millis.length * 99 / 100],
                target);
    }
}
