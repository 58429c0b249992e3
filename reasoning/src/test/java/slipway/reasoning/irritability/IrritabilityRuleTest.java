package slipway.reasoning.irritability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IrritabilityRuleTest {
    /** Each column alone on both sides of its limit: rest, night, worst, flare, settle, onset, only at end range. */
    @ParameterizedTest
    @CsvSource({
        "7, 0, 7, 0, 20, 60, false, HIGH",
        "6, 0, 7, 0, 20, 60, false, MODERATE",
        "0, 7, 7, 0, 20, 60, false, HIGH",
        "0, 0, 7, 61, 20, 60, false, HIGH",
        "0, 0, 7, 60, 20, 60, false, MODERATE",
        "0, 0, 7, 0, 20, 29, false, HIGH",
        "0, 0, 7, 0, 20, 30, false, MODERATE",
        "0, 0, 3, 0, 10, 60, true, LOW",
        "0, 0, 4, 0, 10, 60, true, MODERATE",
        "0, 0, 3, 0, 11, 60, true, MODERATE",
        "0, 0, 3, 0, 10, 60, false, MODERATE",
        "0, 0, 3, 0, 10, 29, true, HIGH",
    })
    void followsTheRule(
            double rest,
            double night,
            double worst,
            double flare,
            double settle,
            double onset,
            boolean end,
            Irritability level) {
        var findings = new IrritabilityFindings(
                of(rest), of(night), of(worst), of(flare), of(settle), of(onset), end, Optional.empty());
        IrritabilityReport report = IrritabilityRule.judge(findings);
        assertThat(report.level()).isEqualTo(level);
        assertThat(report.reasons()).isNotEmpty();
    }

    @Test
    void whatIsUnknownIsNotLow() {
        OptionalDouble none = OptionalDouble.empty();
        var findings = new IrritabilityFindings(none, none, none, none, none, none, true, Optional.empty());
        assertThat(IrritabilityRule.judge(findings).level()).isEqualTo(Irritability.MODERATE);
    }

    @Test
    void ofRuleAndJudgementTheHigherCounts() {
        assertThat(level(20, Irritability.LOW)).isEqualTo(Irritability.HIGH);
        assertThat(level(60, Irritability.HIGH)).isEqualTo(Irritability.HIGH);
        assertThat(level(60, Irritability.LOW)).isEqualTo(Irritability.MODERATE);
    }

    @Test
    void impossibleNumbersAreRefusedAllAtOnce() {
        assertThatThrownBy(() -> new IrritabilityFindings(
                        of(Double.NaN), of(11), of(3), of(-1), of(5), of(40), false, Optional.empty()))
                .hasMessageContaining("pain at rest must be within 0 and 10, was NaN")
                .hasMessageContaining("pain at night must be within 0 and 10, was 11.0")
                .hasMessageContaining("duration of a flare must be within 0 and 10080 min, was -1.0 min");
    }

    private static Irritability level(double onset, Irritability judgement) {
        var none = OptionalDouble.empty();
        var findings = new IrritabilityFindings(none, none, none, none, none, of(onset), false, Optional.of(judgement));
        return IrritabilityRule.judge(findings).level();
    }

    private static OptionalDouble of(double value) {
        return OptionalDouble.of(value);
    }
}
