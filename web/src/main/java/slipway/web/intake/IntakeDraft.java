package slipway.web.intake;

import java.util.List;
import java.util.Optional;
import slipway.care.record.Records;
import slipway.care.record.draft.Draft;
import slipway.web.intake.IntakeDoor.Opened;
import slipway.web.told.Answers;
import slipway.web.told.Question;
import slipway.web.told.Questions;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * What was tapped so far, kept on the server under the code.
 *
 * @param step on which the person is
 */
record IntakeDraft(int step, Answers answers) {
    private static final String FORM = "intake";
    private static final String STEP = "step";
    private static final String ANSWERS = "answers";

    /** Empty before the first page was sent. */
    static Optional<IntakeDraft> find(Records records, Opened opened) {
        return records.drafts()
                .find(opened.link().episodeId(), FORM, opened.act())
                .map(Draft::content)
                .map(text -> (ObjectNode) JsonMapper.shared().readTree(text))
                .map(tree -> new IntakeDraft(
                        Math.min(Math.max(tree.path(STEP).asInt(1), 1), Questions.STEPS),
                        new Answers(tree.withObject("/" + ANSWERS))));
    }

    static IntakeDraft empty() {
        return new IntakeDraft(1, new Answers(JsonMapper.shared().createObjectNode()));
    }

    /** With the answers of one page in place of those before, and the person on some page. */
    IntakeDraft with(List<Question> page, ObjectNode given, int next) {
        ObjectNode all = answers.content();
        page.forEach(question -> all.remove(question.id()));
        all.setAll(given);
        return new IntakeDraft(next, new Answers(all));
    }

    void save(Records records, Opened opened) {
        ObjectNode tree = JsonMapper.shared().createObjectNode();
        tree.put(STEP, step);
        tree.set(ANSWERS, answers.content());
        records.drafts().save(opened.link().episodeId(), FORM, 0, tree.toString(), opened.act());
    }

    static void drop(Records records, Opened opened) {
        records.drafts().drop(opened.link().episodeId(), FORM, opened.act());
    }
}
