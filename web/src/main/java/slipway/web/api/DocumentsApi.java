package slipway.web.api;

import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import slipway.care.record.NotThere;
import slipway.care.record.chart.Chart;
import slipway.care.record.papers.StoredDocument;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Kept documents: sheets and letters as PDF, guides. */
@RestController
class DocumentsApi {
    private final ApiDesk desk;

    DocumentsApi(ApiDesk desk) {
        this.desk = desk;
    }

    @GetMapping("/api/v1/cases/{episode}/documents")
    ResponseEntity<byte[]> list(@PathVariable String episode) {
        Chart chart = desk.open(episode);
        ObjectNode answer = JsonMapper.shared().createObjectNode();
        ArrayNode list = answer.putArray("documents");
        for (StoredDocument document : chart.documents().list()) {
            ObjectNode row = list.addObject()
                    .put("id", document.id())
                    .put("kind", document.kind())
                    .put("mediaType", document.mediaType())
                    .put("size", document.size())
                    .put("sha256", document.sha256())
                    .put("at", document.at().toString());
            document.planVersion().ifPresent(number -> row.put("plan", number));
        }
        return Json.ok(answer);
    }

    @GetMapping("/api/v1/cases/{episode}/documents/{document}")
    ResponseEntity<byte[]> read(@PathVariable String episode, @PathVariable String document) {
        Chart chart = desk.open(episode);
        StoredDocument kept = chart.documents().find(document).orElseThrow(() -> new NotThere("document", document));
        byte[] bytes = chart.documents().bytes(document).orElseThrow(() -> new NotThere("document", document));
        desk.noteExport(chart, "document", document);
        return ResponseEntity.ok()
                .eTag(Versions.tag(kept.sha256()))
                .contentType(MediaType.parseMediaType(kept.mediaType()))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(kept.kind() + (kept.mediaType().endsWith("pdf") ? ".pdf" : ".html"))
                                .build()
                                .toString())
                .body(bytes);
    }
}
