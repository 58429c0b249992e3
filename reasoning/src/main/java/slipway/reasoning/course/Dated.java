package slipway.reasoning.course;

import java.time.LocalDate;

/** A score and its day. */
public record Dated(LocalDate day, double score) {
    public Dated {
        if (!Double.isFinite(score)) {
            throw new IllegalArgumentException("a score must be a finite number, was " + score);
        }
    }
}
