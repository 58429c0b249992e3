package slipway.web.episode;

import java.util.List;
import java.util.Optional;
import slipway.care.record.draft.Draft;
import slipway.documents.words.Words;

/**
 * The head of every page of an episode.
 *
 * @param facts of the person and the episode, for the line below the name
 * @param news what happened since the last visit, at most three lines
 * @param draft what was typed on this page and not saved, and is shown instead of what is recorded
 */
public record EpisodeHead(
        String episodeId,
        String personId,
        String name,
        List<String> facts,
        List<String> news,
        List<Mark> marks,
        Optional<Draft> draft,
        Words words) {
    public EpisodeHead {
        facts = List.copyOf(facts);
        news = List.copyOf(news);
        marks = List.copyOf(marks);
    }

    /** The same with a draft. */
    EpisodeHead with(Optional<Draft> kept) {
        return new EpisodeHead(episodeId, personId, name, facts, news, marks, kept, words);
    }

    /** A text of the frame of an episode. */
    public String text(String key, Object... values) {
        return words.get(key, values);
    }

    /** Name of a step. */
    public String label(Step step) {
        return words.get("step." + step.key());
    }

    /**
     * One step in the line of steps.
     *
     * @param sign what stands behind its name: ✓, ! or nothing
     * @param says the sign in words
     */
    public record Mark(Step step, String label, String sign, String says) {}
}
