package slipway.exchange.fhir;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipway.care.casefile.CaseFile;
import slipway.care.facts.ChartFacts;
import slipway.care.facts.EpisodeFacts;
import slipway.care.facts.Frame;
import slipway.care.facts.Taken;
import slipway.care.record.assembly.CaseSplit;
import slipway.care.record.chart.Chart;
import slipway.care.record.content.Paperwork;
import slipway.care.record.content.Section;
import slipway.care.record.person.Age;
import slipway.care.record.person.PersonDetails;
import tools.jackson.databind.JsonNode;

/**
 * What is known of a person and an episode, as far as a bundle from elsewhere can tell it.
 *
 * @param ordered day of the order
 * @param diagnoses codes of ICD-10-CM
 */
public record Known(
        Optional<String> name,
        Optional<String> sex,
        Optional<LocalDate> born,
        Optional<LocalDate> ordered,
        Optional<String> referrer,
        List<String> diagnoses,
        List<Taken> scores) {
    /** Nothing: what a bundle is laid beside that makes a new person. */
    public static final Known NOTHING = new Known(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            List.of());

    public Known {
        diagnoses = List.copyOf(diagnoses);
        scores = List.copyOf(scores);
    }

    static Known of(EpisodeFacts facts) {
        return new Known(
                facts.file().patient().name(),
                facts.file().patient().sex(),
                facts.frame().born(),
                facts.frame().orderedOn(),
                facts.frame().referrer(),
                facts.frame().diagnoses(),
                facts.scores());
    }

    /** Of a chart, whether its case is whole or not. */
    static Known of(Chart chart) {
        PersonDetails person = chart.person().details();
        JsonNode papers = chart.section(Section.PAPERWORK).content().path(Paperwork.KEY);
        return new Known(
                Optional.of(person.name()).filter(name -> !name.equals(CaseSplit.NO_NAME)),
                person.sex(),
                person.age().flatMap(Known::born),
                text(papers, "orderedOn").map(LocalDate::parse),
                text(papers, "referrer"),
                papers.path("diagnoses").valueStream().map(JsonNode::asString).toList(),
                ChartFacts.scores(chart, new ArrayList<>()));
    }

    private static Optional<LocalDate> born(Age age) {
        return age instanceof Age.Born born ? Optional.of(born.on()) : Optional.empty();
    }

    private static Optional<String> text(JsonNode node, String key) {
        return Optional.of(node.path(key).asString("")).filter(text -> !text.isEmpty());
    }

    /** The facts with this in place of what they told of the same. */
    EpisodeFacts in(EpisodeFacts facts) {
        Frame frame = facts.frame();
        return new EpisodeFacts(
                in(facts.file()),
                new Frame(
                        born,
                        frame.therapist(),
                        referrer,
                        ordered,
                        frame.payer(),
                        frame.dosage(),
                        diagnoses,
                        frame.letters()),
                facts.visits(),
                scores,
                facts.goals(),
                facts.checkIns(),
                facts.ending());
    }

    private CaseFile in(CaseFile file) {
        var person = new slipway.care.casefile.Patient(
                name,
                file.patient().ageYears(),
                sex,
                file.patient().statureCm(),
                file.patient().massKg());
        return new CaseFile(
                file.id(),
                file.provenance(),
                person,
                file.episode(),
                file.safety(),
                file.examination(),
                file.sites(),
                file.choices());
    }
}
