package slipway.care.facts;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import slipway.care.casefile.CaseFile;
import slipway.care.follow.CheckInFile;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.SupervisedTry;
import slipway.care.record.chart.TryEntry;
import slipway.care.record.chart.VisitRecord;
import slipway.care.record.content.Section;
import slipway.care.record.follow.Goal;
import slipway.care.record.follow.MeasureEntry;
import slipway.care.record.papers.Paper;
import slipway.care.record.person.Age;
import slipway.exercises.yaml.MistakesException;
import slipway.reasoning.course.GoalDraft;
import slipway.reasoning.measures.Measures;
import slipway.reasoning.response.checkin.CheckIn;
import tools.jackson.databind.JsonNode;

/**
 * The facts of a chart.
 *
 * @param notRead what stands in the record in a form that is not understood: kind and id, never content
 */
public record ChartFacts(EpisodeFacts facts, List<String> notRead) {
    public ChartFacts {
        notRead = List.copyOf(notRead);
    }

    /**
     * Reads a chart.
     *
     * @param file the case of the chart
     * @param therapist name for the papers
     * @param names of members of staff by id, for who saw the person
     * @param zone of the clinic, for the days of visits
     */
    public static ChartFacts of(
            Chart chart, CaseFile file, Optional<Frame.Therapist> therapist, UnaryOperator<String> names, ZoneId zone) {
        var paperwork = new PaperworkReader(chart.section(Section.PAPERWORK).content());
        Frame frame = paperwork.frame(therapist);
        var reader = new Reader(chart, file, names, zone, paperwork);
        var facts = new EpisodeFacts(
                file,
                reader.framed(frame),
                reader.visits(),
                scores(chart, reader.notRead),
                reader.goals(),
                reader.checkIns(),
                paperwork.ending());
        return new ChartFacts(facts, reader.notRead);
    }

    /**
     * The scores of a chart.
     *
     * @param notRead gets kind and id of what is not understood
     */
    public static List<Taken> scores(Chart chart, List<String> notRead) {
        var scores = new ArrayList<Taken>();
        for (MeasureEntry entry : chart.measures().list()) {
            try {
                scores.add(ScoreBody.read(Measures.bundled().get(entry.measureId()), entry.day(), entry.body()));
            } catch (IllegalArgumentException e) {
                notRead.add("measure " + entry.id());
            }
        }
        return scores;
    }

    private static final class Reader {
        private final Chart chart;
        private final CaseFile file;
        private final UnaryOperator<String> names;
        private final ZoneId zone;
        private final PaperworkReader paperwork;
        private final List<String> notRead = new ArrayList<>();

        Reader(Chart chart, CaseFile file, UnaryOperator<String> names, ZoneId zone, PaperworkReader paperwork) {
            this.chart = chart;
            this.file = file;
            this.names = names;
            this.zone = zone;
            this.paperwork = paperwork;
        }

        private LocalDate day(Instant at) {
            return LocalDate.ofInstant(at, zone);
        }

        Frame framed(Frame frame) {
            Optional<LocalDate> born = chart.person().details().age().flatMap(Reader::born);
            var letters = new ArrayList<>(frame.letters());
            for (Paper paper : chart.papers().list()) {
                paper.signature()
                        .ifPresent(signed -> letters.add(new Frame.Sent(paper.kind(), day(signed.at()), "", "signed")));
            }
            return new Frame(
                    born.or(frame::born),
                    frame.therapist(),
                    frame.referrer(),
                    frame.orderedOn(),
                    frame.payer(),
                    frame.dosage(),
                    frame.diagnoses(),
                    letters);
        }

        private static Optional<LocalDate> born(Age age) {
            return age instanceof Age.Born born ? Optional.of(born.on()) : Optional.empty();
        }

        List<Treatment> visits() {
            List<SupervisedTry> tries = chart.visits().tries();
            return chart.visits().list().stream()
                    .map(visit -> visit(visit, tries))
                    .toList();
        }

        private Treatment visit(VisitRecord visit, List<SupervisedTry> tries) {
            List<TryEntry> here = tries.stream()
                    .filter(each -> each.visitId().equals(visit.id()))
                    .map(SupervisedTry::entry)
                    .toList();
            return paperwork.treatment(
                    visit.number(), day(visit.startedAt()), Optional.of(names.apply(visit.staffId())), here);
        }

        /** The body of an entry holds {@code total}, or {@code answers} by number of the item. */
        /** The target of a goal holds {@code activity}, {@code condition}, {@code baseline} and {@code target}. */
        List<GoalDraft> goals() {
            String person = file.patient().name().orElse("The person");
            return chart.goals().list().stream()
                    .filter(goal -> !goal.state().equals("dropped"))
                    .map(goal -> goal(goal, person))
                    .toList();
        }

        private static GoalDraft goal(Goal goal, String person) {
            JsonNode target = goal.target();
            return new GoalDraft(
                    goal.id(),
                    person,
                    target.path("activity").asString(goal.words()),
                    target.path("condition").asString(""),
                    goal.measureId(),
                    number(target.path("baseline")),
                    number(target.path("target")),
                    goal.due());
        }

        private static OptionalDouble number(JsonNode node) {
            return node.isNumber() ? OptionalDouble.of(node.doubleValue()) : OptionalDouble.empty();
        }

        /** One by one, so that one that is not understood takes no other with it. */
        List<CheckIn> checkIns() {
            var read = new ArrayList<CheckIn>();
            for (var kept : chart.checkIns().list()) {
                String text = CheckInFile.text(kept.body());
                try {
                    read.addAll(CheckInFile.read(
                            "check-in", text.getBytes(StandardCharsets.UTF_8), List.of(kept.exerciseId())));
                } catch (MistakesException e) {
                    notRead.add("check-in " + kept.id());
                }
            }
            return read;
        }
    }
}
