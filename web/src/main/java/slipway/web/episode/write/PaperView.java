package slipway.web.episode.write;

import java.util.List;
import java.util.Map;
import slipway.care.record.papers.Paper;
import slipway.documents.paper.PaperText;
import slipway.documents.paper.Signed;

/**
 * What a page shows of a paper.
 *
 * @param number of each sentence by its id, from 1, for anchors
 * @param sources pages of each sentence by its id
 * @param reviewed whether a speaker has reviewed the texts of its language
 */
public record PaperView(
        Paper paper,
        PaperText text,
        Signed signed,
        Map<String, Integer> number,
        Map<String, List<Source>> sources,
        boolean reviewed) {
    public PaperView {
        number = Map.copyOf(number);
        sources = Map.copyOf(sources);
    }
}
