package slipway.web.episode.measure;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A score as a list shows it.
 *
 * @param score with its unit; empty if too few items were answered
 */
public record ScoreRow(LocalDate day, String measure, Optional<String> score) {
    static ScoreRow of(Scores.Entered entered) {
        return new ScoreRow(
                entered.day(),
                entered.measure().name(),
                entered.score().isPresent()
                        ? Optional.of(entered.measure().text(entered.score().getAsDouble()))
                        : Optional.empty());
    }
}
