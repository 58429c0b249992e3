package slipway.web.intake;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import slipway.care.record.intake.Intake;
import slipway.care.record.intake.Intakes;
import slipway.exercises.exercise.Language;
import slipway.store.db.StoreFailure;
import slipway.web.intake.IntakeDoor.Opened;
import slipway.web.told.Answers;
import slipway.web.told.Question;
import slipway.web.told.Questions;

/** Tells the clinic of a sign of danger at once, before the person is done. */
@Component
class Dangers {
    private static final Logger LOG = LoggerFactory.getLogger(Dangers.class);
    private static final String WORDS = "Told by phone before the first visit, yes to: ";

    /** What came of it. */
    enum Outcome {
        NOTHING_NEW,
        TOLD,
        /** The clinic has not got it. */
        FAILED
    }

    /** Keeps the signs that were not told by this code before, and raises one alert for them. */
    Outcome tell(Opened opened, Answers answers, Language language) {
        List<Question> signs = untold(opened, answers);
        if (signs.isEmpty()) {
            return Outcome.NOTHING_NEW;
        }
        try {
            Answers told = answers.of(Questions.all().stream()
                    .filter(question -> question.kind() == Question.Kind.DANGER)
                    .toList());
            Optional<Intake> kept =
                    opened.chart().intakes().tell(false, language, told.content(), alert(opened, signs));
            return kept.isPresent() ? Outcome.TOLD : Outcome.NOTHING_NEW;
        } catch (StoreFailure e) {
            // The person must hear at once that nobody was told.
            LOG.error("a sign of danger could not be kept: {}", e.getMessage());
            return Outcome.FAILED;
        }
    }

    /** An alert for signs that have none yet. */
    Optional<Intakes.Danger> alert(Opened opened, Answers answers) {
        return alert(opened, untold(opened, answers));
    }

    private static Optional<Intakes.Danger> alert(Opened opened, List<Question> signs) {
        if (signs.isEmpty()) {
            return Optional.empty();
        }
        boolean emergency = signs.stream().anyMatch(Question::emergency);
        String words = signs.stream()
                .map(sign -> "“" + sign.asked(Questions.words(Language.EN)) + "”")
                .collect(Collectors.joining(" "));
        return Optional.of(new Intakes.Danger(
                Intake.ALERT + (emergency ? "emergency" : "urgent"),
                WORDS + words,
                opened.chart().episode().therapistId()));
    }

    private static List<Question> untold(Opened opened, Answers answers) {
        List<String> told = opened.told().stream()
                .flatMap(each -> new Answers(each.answers()).signs().stream())
                .map(Question::id)
                .toList();
        return answers.signs().stream()
                .filter(sign -> !told.contains(sign.id()))
                .toList();
    }
}
