package slipway.web.remind;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.record.access.Clinic;
import slipway.exercises.exercise.Language;
import slipway.exercises.readability.ReadingLevel;

class ReminderReadabilityTest {
    private static final Clinic CLINIC = new Clinic("c", "Harbour Street", "therapy", "555 0100", "112", true, 1);

    @ParameterizedTest
    @EnumSource
    void bothRemindersAreEasyToRead(Language language) {
        for (Need need : new Need[] {Need.TODAY, Need.ASK}) {
            String text = new ReminderMail(need, CLINIC, "", "").text(language);
            assertThat(ReadingLevel.of(language, List.of(text.split("\n\n"))))
                    .as("%s", need)
                    .matches(ReadingLevel::easyEnough);
        }
    }

    @ParameterizedTest
    @EnumSource
    void whoHasNotReviewedSaysSo(Language language) {
        assertThat(ReminderMail.words(language).reviewed()).isEqualTo(language == Language.EN);
    }
}
