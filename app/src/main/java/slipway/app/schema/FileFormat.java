package slipway.app.schema;

import java.util.Arrays;
import java.util.Optional;
import slipway.care.casefile.CaseSchema;
import slipway.care.facts.EpisodeFiles;
import slipway.care.plan.PlanSchema;
import slipway.exercises.format.ExerciseReader;

/** A file format with a schema. */
enum FileFormat {
    CASE("case", "a person's findings, read by plan, screen and locate (YAML)"),
    EPISODE("episode", "visits, scores and goals of an episode, read by paper and fhir (YAML)"),
    PLAN("plan", "what plan proposes, with its basis (JSON)"),
    EXERCISE("exercise", "an exercise of the catalogue (YAML)");

    private final String key;
    private final String description;

    FileFormat(String key, String description) {
        this.key = key;
        this.description = description;
    }

    String key() {
        return key;
    }

    String description() {
        return description;
    }

    String schema() {
        return switch (this) {
            case CASE -> CaseSchema.text();
            case EPISODE -> EpisodeFiles.schemaText();
            case PLAN -> PlanSchema.text();
            case EXERCISE -> ExerciseReader.schemaText();
        };
    }

    static Optional<FileFormat> find(String key) {
        return Arrays.stream(values()).filter(format -> format.key.equals(key)).findFirst();
    }
}
