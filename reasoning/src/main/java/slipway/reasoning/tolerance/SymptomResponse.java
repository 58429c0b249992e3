package slipway.reasoning.tolerance;

/** What a neural test brought out where it stopped. */
public enum SymptomResponse {
    /** The first change from resting of the person's own symptom: the onset. */
    FAMILIAR_SYMPTOM,
    /** The person's own symptom, in the limb of the other side: a crossed response. */
    CROSSED_SYMPTOM,
    /** Only a stretch or something unfamiliar: as to the tolerance a negative test. */
    STRETCH_ONLY,
    /** Nothing. */
    NONE;

    /** Whether the tolerance is only known to be at least the load that was reached. */
    public boolean censored() {
        return this == STRETCH_ONLY || this == NONE;
    }
}
