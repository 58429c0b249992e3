package slipway.reasoning.screening;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The score for deep-vein thrombosis, from items of {@code rules.yaml}.
 *
 * @param items its items in order
 * @param likelyFrom smallest score that makes a thrombosis likely
 */
public record Wells(List<Item> items, int likelyFrom) {
    /**
     * One item.
     *
     * @param id key in files
     * @param points added when the answer is yes
     * @param needsReason whether a yes counts only with a written reason
     * @param wordsEn plain words
     */
    public record Item(String id, int points, boolean needsReason, String wordsEn) {}

    /**
     * Answers of one person.
     *
     * @param answers by item id; what is not in it was not looked at
     * @param reason why an alternative diagnosis is at least as likely; may be empty
     */
    public record Answers(Map<String, Answer> answers, String reason) {
        public Answers {
            answers = Map.copyOf(answers);
        }
    }

    /**
     * The score.
     *
     * @param points sum of the items answered yes
     * @param likely whether a thrombosis is likely by the two-level rule
     * @param notAsked items that were not answered yes or no
     * @param notes why an item did not count
     */
    public record Score(int points, boolean likely, List<String> notAsked, List<String> notes) {
        public Score {
            notAsked = List.copyOf(notAsked);
            notes = List.copyOf(notes);
        }
    }

    public Wells {
        items = List.copyOf(items);
    }

    /**
     * The score of these answers. An item that takes points away counts only with a written reason.
     *
     * @throws IllegalArgumentException naming items that do not exist
     */
    public Score score(Answers given) {
        var unknown = new ArrayList<>(given.answers().keySet());
        items.forEach(item -> unknown.remove(item.id()));
        if (!unknown.isEmpty()) {
            throw new IllegalArgumentException("the Wells score has no item " + String.join(", ", unknown));
        }
        int points = 0;
        var notAsked = new ArrayList<String>();
        var notes = new ArrayList<String>();
        for (Item item : items) {
            Answer answer = given.answers().getOrDefault(item.id(), Answer.UNKNOWN);
            if (answer == Answer.UNKNOWN) {
                notAsked.add(item.id());
            } else if (answer == Answer.YES
                    && item.needsReason()
                    && given.reason().isBlank()) {
                notes.add(item.id() + " does not count without a written reason");
            } else if (answer == Answer.YES) {
                points += item.points();
            }
        }
        return new Score(points, points >= likelyFrom, notAsked, notes);
    }
}
