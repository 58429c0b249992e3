package slipway.web.patient;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import slipway.web.patient.PatientDoor.Opened;

/** A reminder for the phone's own calendar, until the code ends. */
@Controller
class ReminderController {
    private static final MediaType CALENDAR = new MediaType("text", "calendar", StandardCharsets.UTF_8);
    private static final String USUAL = "18:00";

    private final PatientDoor door;
    private final HomeView view;
    private final Clock clock;

    ReminderController(PatientDoor door, HomeView view, Clock clock) {
        this.door = door;
        this.view = view;
        this.clock = clock;
    }

    @GetMapping("/home/reminder.ics")
    ResponseEntity<String> reminder(@RequestParam(defaultValue = USUAL) String at, HttpServletRequest request) {
        Optional<Opened> opened = door.opened();
        if (opened.isEmpty()) {
            return ResponseEntity.status(HttpStatus.SEE_OTHER)
                    .header(HttpHeaders.LOCATION, "/p")
                    .build();
        }
        ZoneId zone = ZoneId.systemDefault();
        String file = Reminder.file(
                view.who(opened.get()),
                LocalDate.ofInstant(clock.instant(), zone),
                LocalDate.ofInstant(opened.get().link().expiresAt(), zone),
                LocalTime.parse(at.matches("([01]\\d|2[0-3]):[0-5]\\d") ? at : USUAL),
                PatientViews.words(HomeView.language(request, opened.get())).get("reminder.says"),
                clock.instant());
        return ResponseEntity.ok()
                .contentType(CALENDAR)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename("reminder.ics")
                                .build()
                                .toString())
                .body(file);
    }
}
