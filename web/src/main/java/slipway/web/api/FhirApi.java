package slipway.web.api;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import slipway.care.facts.ChartFacts;
import slipway.care.facts.Frame;
import slipway.care.record.access.StaffAccount;
import slipway.care.record.assembly.Assembly;
import slipway.care.record.chart.Chart;
import slipway.care.record.person.PersonDetails;
import slipway.exchange.fhir.EpisodeBundle;
import slipway.exchange.fhir.Export;
import slipway.exchange.fhir.Fhir;
import slipway.web.episode.Cases;
import slipway.web.episode.CodeBook;
import slipway.web.shell.Pages;

/** An episode as a FHIR R4 bundle. */
@RestController
class FhirApi {
    private static final MediaType FHIR = MediaType.parseMediaType("application/fhir+json");

    private final ApiDesk desk;
    private final Cases cases;
    private final CodeBook book;

    FhirApi(ApiDesk desk, Cases cases, CodeBook book) {
        this.book = book;
        this.desk = desk;
        this.cases = cases;
    }

    @GetMapping("/api/v1/cases/{episode}/fhir")
    ResponseEntity<byte[]> bundle(@PathVariable String episode) {
        Chart chart = desk.open(episode);
        Assembly.Complete whole = CaseText.whole(chart, cases);
        UnaryOperator<String> names = names(chart);
        var therapist = new Frame.Therapist(names.apply(chart.episode().therapistId()), Optional.empty());
        var facts = ChartFacts.of(chart, whole.file(), Optional.of(therapist), names, ZoneId.systemDefault());
        Instant now = chart.openedAt().truncatedTo(ChronoUnit.SECONDS);
        PersonDetails person = chart.person().details();
        String json = Fhir.write(EpisodeBundle.of(new Export(
                facts.facts(),
                cases.visit(whole),
                now,
                "Slipway " + Pages.version(),
                List.of(),
                new Export.Contact(person.phone(), person.email()),
                book.of(chart.episode().clinicId()))));
        desk.noteExport(chart, "fhir", episode);
        return ResponseEntity.ok().contentType(FHIR).body(json.getBytes(StandardCharsets.UTF_8));
    }

    private UnaryOperator<String> names(Chart chart) {
        Map<String, String> names = desk.records().staff().list(chart.episode().clinicId()).stream()
                .collect(Collectors.toMap(StaffAccount::id, StaffAccount::displayName));
        return id -> names.getOrDefault(id, "");
    }
}
