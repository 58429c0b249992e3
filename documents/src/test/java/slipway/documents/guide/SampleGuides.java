package slipway.documents.guide;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import slipway.care.casefile.CaseFiles;
import slipway.care.visit.Visit;
import slipway.care.visit.VisitPlan;
import slipway.exercises.exercise.Language;

/** Guides of an example that ships with the program; planned once, since that is the slow part. */
final class SampleGuides {
    private static final VisitPlan VISIT = planned(Path.of("..", "examples", "low-irritability-stiff.yaml"));
    private static final Map<Language, String> PAGES = new EnumMap<>(Language.class);

    static {
        for (Language language : Language.values()) {
            PAGES.put(language, GuideOfVisit.html(VISIT, language, LocalDate.of(2026, 1, 5), "1"));
        }
    }

    private SampleGuides() {}

    static VisitPlan visit() {
        return VISIT;
    }

    static String page(Language language) {
        return PAGES.getOrDefault(language, "");
    }

    static VisitPlan planned(Path file) {
        try {
            return Visit.plan(CaseFiles.read(Files.readAllBytes(file), file.toString()), "test");
        } catch (IOException e) {
            throw new IllegalStateException("the example " + file + " cannot be read", e);
        }
    }
}
