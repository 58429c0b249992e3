package slipway.reasoning.codes;

/**
 * Something about the codes of a claim.
 *
 * @param rejects whether the claim can't go out with it; otherwise it is a warning
 * @param text what, and what to do
 */
public record CodeProblem(Kind kind, boolean rejects, String text) {
    /** What it is about. */
    public enum Kind {
        NOT_IN_LIST,
        NOT_BILLABLE,
        NOT_YET_VALID,
        NO_LONGER_VALID,
        SIDE_OPEN,
        OTHER_SIDE,
        EXCLUDES_EACH_OTHER,
        TWICE,
        EMERGENCY
    }
}
