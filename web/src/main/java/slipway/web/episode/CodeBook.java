package slipway.web.episode;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.stereotype.Component;
import slipway.care.record.Records;
import slipway.reasoning.codes.DiagnosisCodes;

/** The diagnosis codes of each clinic. What was read is held until another load takes its place, on whichever server. */
@Component
public class CodeBook {
    private final Records records;
    private final Map<String, Held> held = new ConcurrentHashMap<>();

    CodeBook(Records records) {
        this.records = records;
    }

    private record Held(long version, DiagnosisCodes codes) {}

    /** The codes in use in a clinic. */
    public DiagnosisCodes of(String clinicId) {
        long version = records.codes().version(clinicId);
        Held now = held.get(clinicId);
        if (now == null || now.version() != version) {
            now = new Held(
                    version,
                    records.codes()
                            .files(clinicId, version)
                            .map(files -> DiagnosisCodes.of(files.set()))
                            .orElse(DiagnosisCodes.bundled()));
            held.put(clinicId, now);
        }
        return now.codes();
    }
}
