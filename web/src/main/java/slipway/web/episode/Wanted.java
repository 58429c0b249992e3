package slipway.web.episode;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import slipway.care.record.assembly.Assembly;
import slipway.care.record.content.Section;
import slipway.exercises.yaml.Mistake;

/**
 * What keeps a case from being complete, with the page where it is entered.
 *
 * @param address of that page
 * @param place name of that page
 * @param what is wanted there
 */
public record Wanted(String address, String place, String what) {
    private static final int MOST_NAMED = 4;

    /** What is wanted, one line per page. */
    public static List<Wanted> of(Assembly.Incomplete incomplete, EpisodeHead head) {
        Map<String, List<Mistake>> byKey = new LinkedHashMap<>();
        Stream.concat(incomplete.mistakes().stream(), incomplete.missing().stream())
                .forEach(each -> byKey.computeIfAbsent(top(each.path()), key -> new java.util.ArrayList<>())
                        .add(each));
        return byKey.entrySet().stream()
                .map(entry -> wanted(entry.getKey(), entry.getValue(), head))
                .toList();
    }

    private static Wanted wanted(String key, List<Mistake> wanted, EpisodeHead head) {
        String named = String.join(
                ", ",
                wanted.stream().limit(MOST_NAMED).map(each -> words(each, head)).toList());
        String more = wanted.size() > MOST_NAMED ? head.text("missing.more", wanted.size() - MOST_NAMED) : "";
        if (key.equals("person") || key.equals("language")) {
            return new Wanted("/people/" + head.personId(), head.text("details"), named + more);
        }
        return Section.holding(key)
                .filter(section -> section != Section.FRAME)
                .map(Step::editing)
                .map(step ->
                        new Wanted("/episodes/" + head.episodeId() + "/" + step.key(), head.label(step), named + more))
                .orElseGet(() -> new Wanted("/episodes/" + head.episodeId() + "/history", key, named + more));
    }

    /** What is missing in words of the page; what is wrong as the rule says it. */
    private static String words(Mistake mistake, EpisodeHead head) {
        String key = "wanted." + mistake.path();
        return head.words().keys().contains(key) ? head.text(key) : mistake.path() + " " + mistake.message();
    }

    private static String top(String path) {
        return path.split("[.\\[]", 2)[0];
    }
}
