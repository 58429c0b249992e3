package slipway.web.episode.write;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipway.care.record.content.Section;
import slipway.web.episode.EpisodeHead;
import slipway.web.episode.Step;

/**
 * The page that a sentence came from.
 *
 * @param label name of the page
 * @param address its address
 */
public record Source(String label, String address) {
    private static final String PAPERWORK = "#paperwork";

    private static final Map<String, Step> BY_WORD = Map.of(
            "plan", Step.PLAN,
            "measure", Step.MEASURE,
            "goal", Step.MEASURE,
            "visit", Step.WRITE);
    private static final Map<String, Step> BY_EPISODE_WORD = Map.of(
            "checkIns", Step.FOLLOW,
            "goals", Step.MEASURE,
            "measures", Step.MEASURE,
            "visits", Step.WRITE);

    /** The pages of the sources of a sentence, each once; none for a fixed sentence. */
    static List<Source> of(List<String> paths, EpisodeHead head) {
        return paths.stream()
                .flatMap(path -> of(path, head).stream())
                .distinct()
                .toList();
    }

    private static Optional<Source> of(String path, EpisodeHead head) {
        String[] words = path.split("/", -1);
        String second = words.length > 1 ? words[1] : "";
        return switch (words[0]) {
            case "text" -> Optional.empty();
            case "case" -> Optional.of(ofCase(second, head));
            case "episode" -> Optional.of(at(BY_EPISODE_WORD.getOrDefault(second, Step.WRITE), head));
            case "visit" ->
                words.length > 2 && words[2].equals("tries")
                        ? Optional.of(at(Step.TRY, head))
                        : Optional.of(at(Step.WRITE, head));
            default ->
                second.equals("tolerance")
                        ? Optional.of(at(Step.TOLERANCE, head))
                        : second.equals("sites")
                                ? Optional.of(at(Step.LOCATE, head))
                                : Optional.of(at(BY_WORD.getOrDefault(words[0], Step.PLAN), head));
        };
    }

    private static Source ofCase(String key, EpisodeHead head) {
        if (key.equals("person") || key.equals("side")) {
            return new Source(head.text("details"), "/people/" + head.personId());
        }
        if (key.equals("clinic")) {
            return new Source(head.text("clinic"), "/clinic");
        }
        return Section.holding(key)
                .filter(section -> section != Section.FRAME)
                .map(section -> at(Step.editing(section), head))
                .orElseGet(() -> at(Step.PLAN, head));
    }

    private static Source at(Step step, EpisodeHead head) {
        return new Source(
                head.label(step),
                "/episodes/" + head.episodeId() + "/" + step.key() + (step == Step.WRITE ? PAPERWORK : ""));
    }
}
