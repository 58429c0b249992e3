package slipway.care.casefile;

import java.util.Optional;

/** What the person can do at home; empty if not asked. */
public record Abilities(Optional<Boolean> canLieOnFloor, Optional<Boolean> canHoldStrap) {}
