package slipway.care.record.content;

import slipway.care.casefile.CaseParts;
import slipway.care.casefile.PartCheck;
import tools.jackson.databind.node.ObjectNode;

/** Checks one section, so that a form hears of its own mistakes although the rest of the case is still empty. */
public final class SectionCheck {
    private SectionCheck() {}

    /**
     * Checks the content of a section.
     *
     * @param content what is to be kept
     * @param rest what else is there of the case, for rules between sections (a leg raise stands in two of them); an
     *     older content of the same section in it does not count
     * @throws IllegalArgumentException if the content holds a key of another section
     */
    public static PartCheck of(Section section, ObjectNode content, ObjectNode rest) {
        if (!section.ofCase()) {
            return Paperwork.check(SectionRecord.checked(section, content));
        }
        ObjectNode tree = rest.deepCopy();
        tree.remove(Section.PAPERWORK.keys());
        section.keys().forEach(tree::remove);
        tree.setAll(SectionRecord.checked(section, content));
        return CaseParts.check(tree, section.keys());
    }
}
