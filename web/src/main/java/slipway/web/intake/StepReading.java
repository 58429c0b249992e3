package slipway.web.intake;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slipway.web.told.Answers;
import slipway.web.told.Question;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What one page sent.
 *
 * @param good answers that can be kept
 * @param shown what the page shows again: the good ones, and what was written and cannot be kept
 * @param mistakes key of the sentence by the question
 */
record StepReading(ObjectNode good, Answers shown, Map<String, String> mistakes) {
    /** Longest text, in characters; some 150 words. */
    static final int LONGEST = 1000;

    private static final String NUMBER = "[0-9]{1,4}([.,][0-9]{1,2})?";

    /** Reads the answers of a page; anything else that was sent is left alone. */
    static StepReading of(Map<String, String[]> sent, List<Question> page) {
        ObjectNode good = JsonMapper.shared().createObjectNode();
        ObjectNode shown = JsonMapper.shared().createObjectNode();
        var mistakes = new LinkedHashMap<String, String>();
        for (Question question : page) {
            List<String> values = values(sent.getOrDefault(question.id(), new String[0]));
            if (values.isEmpty()) {
                continue;
            }
            String wrong = wrong(question, values);
            if (wrong.isEmpty()) {
                put(good, question, values);
                put(shown, question, values);
            } else {
                mistakes.put(question.id(), wrong);
                if (question.values().isEmpty()) {
                    put(shown, question, values);
                }
            }
        }
        return new StepReading(good, new Answers(shown), mistakes);
    }

    /** Without control characters: no database keeps them all. */
    private static List<String> values(String[] sent) {
        return Arrays.stream(sent)
                .map(value -> value.replaceAll("[\\p{Cntrl}&&[^\\n]]", " ").strip())
                .filter(value -> !value.isEmpty())
                .distinct()
                .toList();
    }

    /** Key of what is wrong; empty text if nothing. */
    private static String wrong(Question question, List<String> values) {
        if (question.kind() != Question.Kind.SEVERAL && values.size() > 1) {
            return "wrong.value";
        }
        String one = values.get(0);
        return switch (question.kind()) {
            case TEXT -> one.codePointCount(0, one.length()) > LONGEST ? "wrong.long" : "";
            case NUMBER -> one.matches(NUMBER) ? "" : "wrong.number";
            case SCALE -> one.matches("[0-9]|10|" + Question.UNKNOWN) ? "" : "wrong.value";
            case DANGER, CHOICE, SEVERAL -> question.values().containsAll(values) ? "" : "wrong.value";
        };
    }

    private static void put(ObjectNode to, Question question, List<String> values) {
        if (question.kind() == Question.Kind.SEVERAL) {
            ArrayNode list = to.putArray(question.id());
            values.forEach(list::add);
        } else {
            to.put(question.id(), values.get(0));
        }
    }
}
