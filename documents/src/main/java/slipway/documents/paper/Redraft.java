package slipway.documents.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Brings a draft up to date with the record while somebody writes on it. */
public final class Redraft {
    private Redraft() {}

    /**
     * A draft that has been brought up to date.
     *
     * @param text what the program assembles now, with every word that a person wrote or changed kept
     * @param changedBelow ids of edited sentences whose record has changed since; the writer has to look at them
     */
    public record Result(PaperText text, List<String> changedBelow) {
        public Result {
            changedBelow = List.copyOf(changedBelow);
        }
    }

    /**
     * The draft with the newest record.
     *
     * @param fresh the same kind of paper, newly assembled
     */
    public static Result of(PaperText draft, PaperText fresh) {
        if (draft.kind() != fresh.kind()) {
            throw new IllegalArgumentException("a %s cannot become a %s"
                    .formatted(draft.kind().key(), fresh.kind().key()));
        }
        var changedBelow = new ArrayList<String>();
        var parts = new ArrayList<Part>();
        for (Part part : fresh.parts()) {
            var sentences = new ArrayList<Sentence>();
            for (Sentence now : part.sentences()) {
                if (!draft.struck().contains(now.id())) {
                    sentences.add(merged(draft.find(now.id()), now, changedBelow));
                }
            }
            sentences.addAll(kept(draft, part.key(), fresh));
            parts.add(new Part(part.key(), part.heading(), sentences));
        }
        parts.addAll(partsOnlyIn(draft, fresh));
        return new Result(
                new PaperText(fresh.kind(), fresh.language(), fresh.title(), fresh.day(), parts, draft.struck()),
                changedBelow);
    }

    private static Sentence merged(Optional<Sentence> before, Sentence now, List<String> changedBelow) {
        if (before.filter(old -> old.state() == Sentence.State.EDITED).isEmpty()) {
            return now;
        }
        if (!before.get().assembled().equals(now.assembled())) {
            changedBelow.add(now.id());
        }
        return now.reading(before.get().text());
    }

    /** What a person wrote, and what a person changed in a sentence that the record no longer gives. */
    private static List<Sentence> kept(PaperText draft, String partKey, PaperText fresh) {
        return draft.parts().stream()
                .filter(part -> part.key().equals(partKey))
                .flatMap(part -> part.sentences().stream())
                .filter(each -> each.state() == Sentence.State.WRITTEN
                        || (each.state() == Sentence.State.EDITED
                                && fresh.find(each.id()).isEmpty()))
                .toList();
    }

    private static List<Part> partsOnlyIn(PaperText draft, PaperText fresh) {
        return draft.parts().stream()
                .filter(part ->
                        fresh.parts().stream().noneMatch(other -> other.key().equals(part.key())))
                .map(part -> new Part(part.key(), part.heading(), kept(draft, part.key(), fresh)))
                .filter(part -> !part.sentences().isEmpty())
                .toList();
    }
}
