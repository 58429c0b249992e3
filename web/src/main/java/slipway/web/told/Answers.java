package slipway.web.told;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import tools.jackson.databind.node.ObjectNode;

/**
 * The answers of one person by the name of the question. Not answered is empty, which is neither "no" nor "I do not
 * know".
 */
public record Answers(ObjectNode content) {
    public Answers {
        content = content.deepCopy();
    }

    /** A copy. */
    @Override
    public ObjectNode content() {
        return content.deepCopy();
    }

    /** The one answer, empty text if there is none. */
    public String text(String id) {
        return content.path(id).asString("");
    }

    /** All answers of a question that takes several. */
    public List<String> list(String id) {
        return content.path(id).isArray()
                ? content.path(id).valueStream().map(each -> each.asString("")).toList()
                : Stream.of(text(id)).filter(text -> !text.isEmpty()).toList();
    }

    public boolean has(String id, String value) {
        return list(id).contains(value);
    }

    public boolean isAnswered(String id) {
        return !list(id).isEmpty();
    }

    /** The signs of danger that are answered with yes. */
    public List<Question> signs() {
        return Questions.all().stream()
                .filter(question -> question.kind() == Question.Kind.DANGER && has(question.id(), Question.YES))
                .toList();
    }

    /** Signs, conditions and whatever else of one page only. */
    public Answers of(List<Question> questions) {
        ObjectNode kept = content.deepCopy();
        kept.retain(questions.stream().map(Question::id).toList());
        return new Answers(kept);
    }

    /** The answer in the words of a language; what was written stays as it is. Empty text if there is none. */
    public String said(Question question, Language language) {
        Words words = Questions.words(language);
        return list(question.id()).stream()
                .map(value -> question.said(value, words))
                .collect(Collectors.joining(", "));
    }
}
