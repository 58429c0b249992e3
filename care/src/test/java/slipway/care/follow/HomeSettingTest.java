package slipway.care.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import slipway.reasoning.response.ladder.Ceiling;
import slipway.reasoning.response.ladder.HomeDose;

class HomeSettingTest {
    @Test
    void itsWordsAreReadBack() {
        HomeSetting set = HomeSetting.of(new HomeDose(8, 1, 2, 0.5, 3), new Ceiling(10, 3, 1));
        assertThat(set.words()).isEqualTo("8 × 1, 2 a day; at most 10, 3 a day");
        assertThat(HomeSetting.read(set.words())).contains(set);
        assertThat(HomeSetting.read("8 × 1, 2 a day; at most 7, 3 a day")).isEmpty();
        assertThat(HomeSetting.read("a little more")).isEmpty();
    }

    @Test
    void aCeilingBelowTheDoseIsRefused() {
        assertThatThrownBy(() -> new HomeSetting(8, 1, 2, 7, 2))
                .hasMessage("most repetitions must be within 8 and 30, was 7");
        assertThatThrownBy(() -> new HomeSetting(8, 1, 7, 8, 7)).hasMessageContaining("sessions a day");
    }
}
