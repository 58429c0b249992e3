package slipway.exchange.fhir;

import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import org.hl7.fhir.r4.model.Attachment;
import org.hl7.fhir.r4.model.DocumentReference;
import org.hl7.fhir.r4.model.Enumerations.DocumentReferenceStatus;
import org.hl7.fhir.r4.model.Provenance;

/** Signed papers, and who made the bundle of what. */
final class PaperResources {
    private final Writer out;
    private final Export export;

    PaperResources(Writer out, Export export) {
        this.out = out;
        this.export = export;
    }

    void write() {
        for (int i = 0; i < export.papers().size(); i++) {
            paper(i, export.papers().get(i));
        }
        provenance();
    }

    private void paper(int index, Export.PaperFile file) {
        var document = new DocumentReference();
        document.setStatus(DocumentReferenceStatus.CURRENT)
                .setType(Codes.own("paper-" + file.kind(), file.title()))
                .setSubject(out.to(FrameResources.PATIENT))
                .setDate(Date.from(file.signedAt()));
        document.addAuthor().setDisplay(file.by());
        var attachment = new Attachment();
        attachment.setContentType(file.mediaType()).setData(file.bytes()).setTitle(file.title());
        document.addContent().setAttachment(attachment);
        out.add("paper/" + index, document, file.title());
    }

    private void provenance() {
        List<String> names = new ArrayList<>();
        out.names().forEach(names::add);
        var provenance = new Provenance();
        names.forEach(name -> provenance.addTarget(out.to(name)));
        provenance.setRecorded(Date.from(export.issued()));
        provenance
                .addAgent()
                .setType(Codes.of(
                        "http://terminology.hl7.org/CodeSystem/provenance-participant-type", "assembler", "Assembler"))
                .setWho(out.to(FrameResources.CLINIC).setDisplay(export.program()));
        out.add("provenance", provenance, "Put together by " + export.program());
    }
}
