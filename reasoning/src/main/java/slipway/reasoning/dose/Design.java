package slipway.reasoning.dose;

/** What came of a candidate. */
public sealed interface Design {
    /** It may be given with this range. */
    record Given(DesignedRange range) implements Design {}

    /** It is not given. */
    record Refused(Refusal refusal) implements Design {}
}
