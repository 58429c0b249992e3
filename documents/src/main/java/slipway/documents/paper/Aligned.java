package slipway.documents.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Lines two lists up by their longest common run of equal keys. Cost: product of the two lengths. */
final class Aligned {
    /** Beyond this product everything counts as replaced, so that no text can take the machine's time. */
    private static final long MOST_CELLS = 4_000_000;

    private Aligned() {}

    /** Two that belong together, or one alone. */
    record Pair<T>(Optional<T> before, Optional<T> after) {
        boolean both() {
            return before.isPresent() && after.isPresent();
        }
    }

    static <T> List<Pair<T>> of(List<T> before, List<T> after, Function<T, String> key) {
        int[][] common = (long) before.size() * after.size() > MOST_CELLS
                ? new int[before.size() + 1][]
                : commonRuns(before, after, key);
        boolean tooLong = common[0] == null;
        var pairs = new ArrayList<Pair<T>>();
        int i = 0;
        int j = 0;
        while (i < before.size() || j < after.size()) {
            boolean inBoth = !tooLong
                    && i < before.size()
                    && j < after.size()
                    && key.apply(before.get(i)).equals(key.apply(after.get(j)));
            if (inBoth) {
                pairs.add(new Pair<>(Optional.of(before.get(i++)), Optional.of(after.get(j++))));
            } else if (j >= after.size() || (i < before.size() && (tooLong || common[i + 1][j] >= common[i][j + 1]))) {
                pairs.add(new Pair<>(Optional.of(before.get(i++)), Optional.empty()));
            } else {
                pairs.add(new Pair<>(Optional.empty(), Optional.of(after.get(j++))));
            }
        }
        return pairs;
    }

    private static <T> int[][] commonRuns(List<T> before, List<T> after, Function<T, String> key) {
        int[][] common = new int[before.size() + 1][after.size() + 1];
        for (int i = before.size() - 1; i >= 0; i--) {
            for (int j = after.size() - 1; j >= 0; j--) {
                common[i][j] = key.apply(before.get(i)).equals(key.apply(after.get(j)))
                        ? common[i + 1][j + 1] + 1
                        : Math.max(common[i + 1][j], common[i][j + 1]);
            }
        }
        return common;
    }
}
