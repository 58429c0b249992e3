package slipway.care.record.content;

import java.time.Instant;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * A section as it stands.
 *
 * @param version 0 if nobody has written it yet, then 1, 2, ...
 * @param content top-level keys of the case file; a copy, so that changing it changes nothing here
 * @param changedAt when it was last written; of an unwritten one when the episode was opened
 * @param changedBy id of whoever wrote it last
 */
public record SectionRecord(Section section, long version, ObjectNode content, Instant changedAt, String changedBy) {
    public SectionRecord {
        content = checked(section, content);
    }

    /** A section that nobody has written. */
    public static SectionRecord unwritten(Section section, Instant openedAt, String openedBy) {
        return new SectionRecord(section, 0, JsonMapper.shared().createObjectNode(), openedAt, openedBy);
    }

    /** A copy of the content. */
    @Override
    public ObjectNode content() {
        return content.deepCopy();
    }

    /** Whether anything stands in it. */
    public boolean isEmpty() {
        return content.isEmpty();
    }

    /**
     * A copy of content that holds nothing but the keys of its section.
     *
     * @throws IllegalArgumentException if it holds another key
     */
    public static ObjectNode checked(Section section, ObjectNode content) {
        for (String key : content.propertyNames()) {
            if (!section.keys().contains(key)) {
                throw new IllegalArgumentException(
                        "section %s holds %s, had another key".formatted(section.key(), section.keys()));
            }
        }
        return content.deepCopy();
    }
}
