package slipway.exchange.fhir;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import slipway.care.facts.EpisodeFacts;
import slipway.care.visit.VisitPlan;
import slipway.reasoning.codes.DiagnosisCodes;

/**
 * What is exported.
 *
 * @param issued moment of the export; the only time that does not come from the record
 * @param program name and version of the program, for the provenance
 * @param papers signed notes and letters that go along
 * @param contact how the person is reached
 * @param codes the diagnosis codes of the clinic
 */
public record Export(
        EpisodeFacts facts,
        VisitPlan plan,
        Instant issued,
        String program,
        List<PaperFile> papers,
        Contact contact,
        DiagnosisCodes codes) {
    public Export {
        papers = List.copyOf(papers);
    }

    /** Without a way to reach the person and without codes of a clinic, as from files, which hold none. */
    public Export(EpisodeFacts facts, VisitPlan plan, Instant issued, String program, List<PaperFile> papers) {
        this(
                facts,
                plan,
                issued,
                program,
                papers,
                new Contact(Optional.empty(), Optional.empty()),
                DiagnosisCodes.bundled());
    }

    /** How the person is reached. */
    public record Contact(Optional<String> phone, Optional<String> email) {}

    /**
     * A signed paper.
     *
     * @param kind for example {@code progress-report}
     */
    public record PaperFile(String kind, String title, String mediaType, byte[] bytes, Instant signedAt, String by) {
        public PaperFile {
            bytes = bytes.clone();
        }

        @Override
        public byte[] bytes() {
            return bytes.clone();
        }
    }

    /** The day of the export in UTC. */
    LocalDate day() {
        return LocalDate.ofInstant(issued, ZoneOffset.UTC);
    }
}
