package slipway.web.shell;

import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import slipway.care.record.Records;

/** For whoever watches the server, and for pages whose reader is still there. */
@Controller
class HealthController {
    private final Records records;

    HealthController(Records records) {
        this.records = records;
    }

    /** Answers 200 while the records can be read. */
    @GetMapping("/health")
    ResponseEntity<String> health() {
        records.clinics().list();
        return ResponseEntity.ok("ok\n");
    }

    /** Being asked is enough: the session lives on. */
    @GetMapping("/alive")
    ResponseEntity<Void> alive() {
        return ResponseEntity.noContent().build();
    }
}
