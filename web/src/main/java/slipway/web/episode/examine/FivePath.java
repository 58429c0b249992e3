package slipway.web.episode.examine;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slipway.reasoning.locate.NextTest;
import slipway.reasoning.locate.NextTests;

/**
 * The path for whoever has five minutes: the key muscles and the reflexes, then what tells most about the place.
 *
 * @param telling the items that tell most now, best first, each judged as if it were the only one
 * @param leftOut the most telling of those that are not on the path
 * @param leftOutCount how many are not on it
 * @param withheld items that a hard stop keeps back, with the reason
 */
public record FivePath(List<NextTest> telling, List<NextTest> leftOut, int leftOutCount, List<String> withheld) {
    /** Muscles that a safety rule asks for, and the two reflexes: tested whatever the findings are. */
    private static final List<String> CORE = List.of(
            "strength hip_flexors",
            "strength knee_extensors",
            "strength ankle_dorsiflexors",
            "strength ankle_plantarflexors",
            "strength hip_abductors",
            "reflex patellar",
            "reflex achilles",
            "provocation slr");

    private static final int TELLING = 3;
    private static final int LEFT_OUT = 3;

    public FivePath {
        telling = List.copyOf(telling);
        leftOut = List.copyOf(leftOut);
        withheld = List.copyOf(withheld);
    }

    /** The path by an advice that ranks everything. */
    static FivePath of(NextTests.Advice advice) {
        var telling = new ArrayList<NextTest>();
        var leftOut = new ArrayList<NextTest>();
        for (NextTest test : advice.best()) {
            if (CORE.contains(key(test))) {
                continue;
            }
            (telling.size() < TELLING ? telling : leftOut).add(test);
        }
        return new FivePath(
                telling, leftOut.subList(0, Math.min(LEFT_OUT, leftOut.size())), leftOut.size(), advice.withheld());
    }

    /** What is held back, one line for each reason, in the words of the page. */
    public List<String> held() {
        Map<String, List<String>> items = new LinkedHashMap<>();
        for (String line : withheld) {
            String[] parts = line.split(": ", 2);
            items.computeIfAbsent(parts[1], reason -> new ArrayList<>()).add(Labels.of(parts[0]));
        }
        return items.entrySet().stream()
                .map(entry -> entry.getKey() + ": " + String.join(", ", entry.getValue()))
                .toList();
    }

    /** Its items, as {@code kind item}. */
    Set<String> items() {
        var items = new HashSet<>(CORE);
        telling.forEach(test -> items.add(key(test)));
        return items;
    }

    private static String key(NextTest test) {
        return test.kind().key() + " " + test.item();
    }
}
