package slipway.care.casefile;

import java.util.List;
import java.util.OptionalInt;
import slipway.reasoning.screening.Region;
import slipway.reasoning.screening.ScreeningInput;

/**
 * What is known of one person, one side, one episode of care. A value of this type has passed every check of
 * {@link CaseFiles}; what was not asked or tested is absent and never counts as normal.
 *
 * @param id short name of the case, without the name of the person
 * @param sites suspected places with weights that sum to 1, in the order of the file; empty if the therapist named none
 */
public record CaseFile(
        String id,
        Provenance provenance,
        Patient patient,
        Episode episode,
        Safety safety,
        Examination examination,
        List<SiteWeight> sites,
        Choices choices) {
    public CaseFile {
        sites = List.copyOf(sites);
    }

    /** The same case with these exercises picked; refusals and remarks stay. */
    public CaseFile choosing(List<String> exerciseIds) {
        var picked = new Choices(exerciseIds, choices.refused(), choices.ceilings(), choices.remarks());
        return new CaseFile(id, provenance, patient, episode, safety, examination, sites, picked);
    }

    /** What the screening looks at. */
    public ScreeningInput screeningInput() {
        return new ScreeningInput(
                Region.LEG,
                safety.answers(),
                safety.clearances(),
                examination.findings(),
                OptionalInt.of((int) patient.ageYears()),
                safety.wells());
    }
}
