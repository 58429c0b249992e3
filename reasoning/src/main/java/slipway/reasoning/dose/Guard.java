package slipway.reasoning.dose;

import java.util.Optional;
import slipway.mechanics.body.Posture;
import slipway.reasoning.basis.Reason;

/** A limit that no model overrides. */
interface Guard {
    /** Why a posture is not allowed; empty if it is. */
    Optional<Reason> forbids(Posture posture);
}
