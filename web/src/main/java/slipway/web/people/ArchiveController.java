package slipway.web.people;

import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.Role;
import slipway.care.record.person.Person;
import slipway.care.record.trail.Action;
import slipway.care.record.trail.Chain;
import slipway.exchange.person.PersonArchive;
import slipway.web.episode.Desk;

/** All that is kept of a person, for the person who asks for it. A lead hands it out, and the trail notes it. */
@Controller
class ArchiveController {
    private static final MediaType ZIP = MediaType.parseMediaType("application/zip");

    private final Desk desk;

    ArchiveController(Desk desk) {
        this.desk = desk;
    }

    @PostMapping("/people/{id}/archive")
    ResponseEntity<byte[]> archive(@PathVariable String id) {
        Act own = desk.act();
        // Somebody with several roles acts as a lead here: the archive is of all episodes, whatever the reach.
        var act = new Act(own.userId(), Role.LEAD, own.clinicId(), own.at());
        Person person = desk.records().people().find(id, act).orElseThrow(() -> new NotThere("person", id));
        byte[] zip = PersonArchive.of(desk.records(), person, act);
        desk.records().trail().note(Chain.ofPerson(id), Action.EXPORT, "person", id, act);
        return ResponseEntity.ok()
                .contentType(ZIP)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename("record-" + id + ".zip")
                                .build()
                                .toString())
                .body(zip);
    }
}
