package slipway.reasoning.screening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Wells 2003, two-level rule: every item +1, an alternative diagnosis at least as likely -2; 2 or more = likely. */
class WellsReferenceTest {
    private final Wells wells = ScreeningRules.load().wells();

    @Test
    void addsOnePerItemAndTakesTwoForAnAlternative() {
        assertThat(wells.items().stream().filter(item -> item.points() == 1)).hasSize(9);
        assertThat(score("calfLarger3cm").likely()).isFalse();
        assertThat(score("calfLarger3cm", "pittingOedema").likely()).isTrue();
        assertThat(score("calfLarger3cm", "pittingOedema", "alternativeAsLikely")
                        .points())
                .isZero();
        assertThat(score("activeCancer", "previousDvt", "entireLegSwollen", "alternativeAsLikely")
                        .likely())
                .isFalse();
    }

    @Test
    void anAlternativeWithoutAWrittenReasonTakesNothingAway() {
        var answers = new HashMap<String, Answer>();
        answers.put("pittingOedema", Answer.YES);
        answers.put("entireLegSwollen", Answer.YES);
        answers.put("alternativeAsLikely", Answer.YES);
        Wells.Score score = wells.score(new Wells.Answers(answers, " "));
        assertThat(score.likely()).isTrue();
        assertThat(score.notes()).singleElement().asString().contains("written reason");
    }

    @Test
    void unknownItemsAreRefused() {
        assertThatThrownBy(() -> wells.score(new Wells.Answers(Map.of("bigCalf", Answer.YES), "")))
                .hasMessageContaining("bigCalf");
    }

    private Wells.Score score(String... yes) {
        var answers = new HashMap<String, Answer>();
        wells.items().forEach(item -> answers.put(item.id(), Answer.NO));
        for (String id : yes) {
            answers.put(id, Answer.YES);
        }
        return wells.score(new Wells.Answers(answers, "muscle tear seen on ultrasound"));
    }
}
