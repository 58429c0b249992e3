package slipway.exchange.fhir;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.EnumMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slipway.care.facts.Taken;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Saving;
import slipway.care.record.assembly.CaseSplit;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.TakeOver;
import slipway.care.record.content.Paperwork;
import slipway.care.record.content.Section;
import slipway.care.record.content.SectionCheck;
import slipway.care.record.content.SectionRecord;
import slipway.care.record.follow.MeasureEntry;
import slipway.care.record.person.Age;
import slipway.care.record.person.Person;
import slipway.care.record.person.PersonDetails;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Side;
import slipway.reasoning.codes.DiagnosisCodes;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A bundle from elsewhere beside the records: what it would change, and the change itself. Both come from one reading, so
 * that what is taken over is what was shown.
 */
public final class Referral {
    private static final int STATE_LETTERS = 16;

    private final Known before;
    private final Preview preview;
    private final String state;
    private final Optional<Chart> chart;
    private final Optional<Beside> beside;

    /** What stood in the records. */
    private record Beside(Person person, SectionRecord paperwork, List<String> measureIds) {}

    private Referral(byte[] text, Optional<Chart> chart, DiagnosisCodes codes) {
        this.chart = chart;
        // First, so that a change while this is read makes it stale.
        this.beside = chart.map(open -> new Beside(
                open.person(),
                open.section(Section.PAPERWORK),
                open.measures().list().stream().map(MeasureEntry::id).toList()));
        this.before = chart.map(Known::of).orElse(Known.NOTHING);
        this.preview = FhirImport.preview(text, before, codes);
        this.state = state(text, beside);
    }

    /**
     * Lays a bundle beside nothing, for a new person.
     *
     * @param codes the diagnosis codes of the clinic
     * @throws RefusedException as {@link FhirImport#preview}, or if the bundle tells of no patient
     */
    public static Referral ofNewPerson(byte[] text, DiagnosisCodes codes) {
        var referral = new Referral(text, Optional.empty(), codes);
        if (referral.preview.known().name().isEmpty()) {
            throw new RefusedException("the bundle names no patient; without a name there is no new person");
        }
        return referral;
    }

    /**
     * Lays a bundle beside an episode.
     *
     * @param codes the diagnosis codes of the clinic
     * @throws RefusedException as {@link FhirImport#preview}
     */
    public static Referral into(Chart chart, byte[] text, DiagnosisCodes codes) {
        return new Referral(text, Optional.of(chart), codes);
    }

    /** What is known without the bundle. */
    public Known before() {
        return before;
    }

    /** What the bundle would change. */
    public Preview preview() {
        return preview;
    }

    /** Names the bundle and what it was laid beside; any change of either gives another. */
    public String state() {
        return state;
    }

    /** Whether what is told of the person differs from what is recorded of them: it may be somebody else. */
    public boolean mayBeSomebodyElse() {
        return preview.of(Preview.Kind.CHANGE).stream()
                .anyMatch(item -> item.resource().equals("Patient"));
    }

    /**
     * Takes it over into the episode that it was laid beside: all of it, or nothing if the records have changed.
     *
     * @throws IllegalStateException if it was laid beside nothing
     */
    public Saving<Person> take() {
        Chart open = chart.orElseThrow(() -> new IllegalStateException("laid beside nothing"));
        return takeInto(open, beside.orElseThrow());
    }

    /**
     * Takes it over as a new person with one episode.
     *
     * @param side of the symptoms, which no bundle tells reliably
     * @param invented whether the person is made up
     */
    public Chart takeAsNew(
            Records records, Side side, Language language, boolean invented, String therapistId, Act act) {
        var start = new PersonDetails(
                CaseSplit.NO_NAME,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                language,
                Optional.empty(),
                Optional.empty(),
                invented);
        PersonDetails details = details(start);
        Person person = records.people().add(details, act);
        Chart opened = records.charts().begin(person.id(), side, therapistId, new EnumMap<>(Section.class), act);
        takeInto(opened, new Beside(person, opened.section(Section.PAPERWORK), List.of()))
                .orThrow();
        return opened;
    }

    private Saving<Person> takeInto(Chart open, Beside stood) {
        ObjectNode paperwork = paperwork(stood.paperwork().content());
        var check = SectionCheck.of(
                Section.PAPERWORK, paperwork, JsonMapper.shared().createObjectNode());
        if (!check.mistakes().isEmpty()) {
            throw new RefusedException("the record cannot hold what the bundle tells: "
                    + check.mistakes().get(0).path());
        }
        return open.takeOver(new TakeOver(
                stood.person().version(),
                details(stood.person().details()),
                stood.paperwork().version(),
                paperwork,
                stood.measureIds(),
                scores()));
    }

    private PersonDetails details(PersonDetails now) {
        Known then = preview.known();
        return new PersonDetails(
                then.name().orElse(now.name()),
                then.born().map(day -> (Age) new Age.Born(day)).or(now::age),
                then.sex().or(now::sex),
                now.statureCm(),
                now.massKg(),
                now.language(),
                now.phone(),
                now.email(),
                now.invented());
    }

    private ObjectNode paperwork(ObjectNode now) {
        ObjectNode content = now.deepCopy();
        Known then = preview.known();
        if (then.ordered().equals(before.ordered())
                && then.referrer().equals(before.referrer())
                && then.diagnoses().equals(before.diagnoses())) {
            return content;
        }
        ObjectNode papers = content.withObject("/" + Paperwork.KEY);
        then.ordered().ifPresent(day -> papers.put("orderedOn", day.toString()));
        then.referrer().ifPresent(who -> papers.put("referrer", who));
        if (!then.diagnoses().isEmpty()) {
            ArrayNode codes = papers.putArray("diagnoses");
            then.diagnoses().forEach(codes::add);
        }
        return content;
    }

    /** New ones stand behind those that were there. */
    private List<TakeOver.Score> scores() {
        return preview.known().scores().stream()
                .skip(before.scores().size())
                .map(Referral::score)
                .toList();
    }

    private static TakeOver.Score score(Taken taken) {
        ObjectNode body = JsonMapper.shared().createObjectNode();
        taken.score().ifPresent(total -> body.put("total", total));
        return new TakeOver.Score(taken.measure().id(), taken.day(), body);
    }

    private static String state(byte[] text, Optional<Beside> beside) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            sha.update(text);
            String stood = beside.map(known -> "%s %d %d %s"
                            .formatted(
                                    known.person().id(),
                                    known.person().version(),
                                    known.paperwork().version(),
                                    known.measureIds()))
                    .orElse("nothing");
            sha.update(stood.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(sha.digest()).substring(0, STATE_LETTERS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
