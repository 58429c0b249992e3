package slipway.documents.paper;

import java.util.Set;
import slipway.care.facts.Treatment;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;

/** Puts papers together. The same record gives the same paper; no clock is read and nothing is guessed. */
public final class PaperWriter {
    private PaperWriter() {}

    /**
     * A paper as the record has it.
     *
     * <p>Papers for colleagues are in English so far, whatever the person's language; the one for the person is in the
     * language of the case.
     *
     * @throws IllegalArgumentException if the record has nothing that such a paper could be about: no visit for a visit
     *     note, nothing to refer for, no plan for a relapse
     */
    public static PaperText write(PaperKind kind, PaperInput in) {
        Language language = kind.forThePerson() ? in.facts().file().episode().language() : Language.EN;
        Words words = Words.beside(PaperWriter.class, language);
        var out = new Writing(words);
        switch (kind) {
            case EVALUATION -> evaluation(out, in);
            case PLAN_OF_CARE -> planOfCare(out, in);
            case VISIT_NOTE -> visitNote(out, in);
            case PROGRESS_REPORT -> progressReport(out, in);
            case REFERRAL -> new EndParts(out, in).referral();
            case LETTER -> letter(out, in);
            case DISCHARGE -> discharge(out, in);
            case RELAPSE_PLAN -> new EndParts(out, in).relapseForThePerson();
        }
        return new PaperText(kind, language, words.get("title." + kind.key()), in.day(), out.parts(), Set.of());
    }

    /** Whether a speaker has reviewed the texts in a language; if not, the therapist must be told. */
    public static boolean reviewed(Language language) {
        return Words.beside(PaperWriter.class, language).reviewed();
    }

    private static void evaluation(Writing out, PaperInput in) {
        var head = new HeadParts(out, in);
        head.person();
        head.diagnoses();
        head.history();
        var examination = new ExaminationParts(out, in);
        examination.screening();
        examination.irritability();
        examination.tests();
        examination.findings();
        examination.judgement();
        var course = new CourseParts(out, in);
        course.baseline();
        course.goals();
        var plan = new PlanParts(out, in);
        plan.dosage();
        plan.exercises();
        plan.cautions();
    }

    private static void planOfCare(Writing out, PaperInput in) {
        var head = new HeadParts(out, in);
        head.person();
        head.diagnoses();
        new CourseParts(out, in).goals();
        var plan = new PlanParts(out, in);
        plan.dosage();
        plan.exercises();
        plan.cautions();
        plan.deadlines();
    }

    private static void visitNote(Writing out, PaperInput in) {
        Treatment visit =
                in.lastVisit().orElseThrow(() -> new IllegalArgumentException("no visit was recorded up to the day"));
        var parts = new VisitParts(out, in, visit);
        parts.told();
        new HomeParts(out, in).home();
        parts.done();
        parts.measured();
        parts.time();
        new PlanParts(out, in).next();
    }

    private static void progressReport(Writing out, PaperInput in) {
        var course = new CourseParts(out, in);
        course.period();
        course.statements();
        course.measures();
        course.goals();
        course.outlooks();
        new HomeParts(out, in).home();
        course.standing();
        var plan = new PlanParts(out, in);
        plan.dosage();
        plan.exercises();
        plan.next();
    }

    private static void letter(Writing out, PaperInput in) {
        var head = new HeadParts(out, in);
        out.part("greeting");
        out.fixed("greeting.thanks");
        head.person();
        var course = new CourseParts(out, in);
        course.wholePeriod();
        var examination = new ExaminationParts(out, in);
        examination.screening();
        examination.judgement();
        course.measures();
        course.goals();
        course.outlooks();
        course.standing();
        new PlanParts(out, in).exercises();
        new PlanParts(out, in).next();
        out.part("closing");
        out.fixed("closing.question");
    }

    private static void discharge(Writing out, PaperInput in) {
        new HeadParts(out, in).person();
        var course = new CourseParts(out, in);
        course.wholePeriod();
        course.measures();
        course.goals();
        course.outlooks();
        new HomeParts(out, in).home();
        var end = new EndParts(out, in);
        end.discharge();
        end.relapseInShort();
        new PlanParts(out, in).exercises();
        new PlanParts(out, in).next();
    }
}
