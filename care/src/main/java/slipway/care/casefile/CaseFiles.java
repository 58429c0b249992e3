package slipway.care.casefile;

import slipway.exercises.yaml.MistakesException;
import slipway.exercises.yaml.YamlDocument;
import slipway.exercises.yaml.YamlSchema;

/** Reads case files. */
public final class CaseFiles {
    private static final YamlSchema SCHEMA = YamlSchema.of(CaseSchema.node());

    private CaseFiles() {}

    /**
     * Reads a case file. The schema, the rules between values and the words of the examination are all checked before
     * anything is said, so that one look at the message is enough.
     *
     * @param bytes the content of the file
     * @param name its name, for messages
     * @throws MistakesException with every mistake, each with line, column, path, rule and what was found
     */
    public static CaseFile read(byte[] bytes, String name) {
        YamlDocument document = YamlDocument.readAsFarAsPossible(name, bytes);
        var report = new Report(document);
        report.addAll(SCHEMA.check(document));
        return CaseReader.read(new Fields(document.root(), ""), report);
    }
}
