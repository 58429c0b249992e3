package slipway.web.episode.write;

import java.util.Optional;
import slipway.documents.paper.PaperInput;
import slipway.documents.paper.PaperKind;
import slipway.documents.paper.PaperWriter;

/**
 * A paper that can be written now, or not.
 *
 * @param refusal why the record has nothing that such a paper could be about
 */
public record KindRow(PaperKind kind, Optional<String> refusal) {
    static KindRow of(PaperKind kind, PaperInput input) {
        try {
            PaperWriter.write(kind, input);
            return new KindRow(kind, Optional.empty());
        } catch (IllegalArgumentException e) {
            return new KindRow(kind, Optional.of(String.valueOf(e.getMessage())));
        }
    }
}
