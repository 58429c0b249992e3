package slipway.web.episode;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.care.record.NotThere;
import slipway.care.record.content.Section;
import slipway.care.record.draft.Draft;
import slipway.web.form.FormReader;
import slipway.web.told.Overwriting;

/** Keeps what somebody types before it is saved, so that a session that idles out loses nothing. */
@Controller
class DraftController {
    private final Desk desk;

    DraftController(Desk desk) {
        this.desk = desk;
    }

    /** Keeps a form as it stands; what is wrong with it is said when it is saved. */
    @PostMapping("/episodes/{id}/drafts/{section}")
    ResponseEntity<Void> keep(
            @PathVariable String id,
            @PathVariable String section,
            @RequestParam long version,
            HttpServletRequest request) {
        Section edited = section(section);
        String content =
                FormReader.read(request.getParameterMap(), keys(edited)).toString();
        if (content.length() > Draft.MAX_CONTENT || version < 0) {
            return ResponseEntity.status(HttpStatus.CONTENT_TOO_LARGE).build();
        }
        desk.records().drafts().save(id, edited.key(), version, content, desk.act());
        return ResponseEntity.noContent().build();
    }

    /** Drops what was kept and shows what is recorded. */
    @PostMapping("/episodes/{id}/drafts/{section}/drop")
    String drop(@PathVariable String id, @PathVariable String section) {
        Section edited = section(section);
        desk.records().drafts().drop(id, edited.key(), desk.act());
        return "redirect:/episodes/" + id + "/" + Step.editing(edited).key();
    }

    /** What the section is made of, and why it says other than what was told. */
    private static List<String> keys(Section edited) {
        return Stream.concat(edited.keys().stream(), Stream.of(Overwriting.WHY)).toList();
    }

    private static Section section(String key) {
        return Section.find(key).orElseThrow(() -> new NotThere("section", key));
    }
}
