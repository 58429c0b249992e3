package slipway.benchmarks.papers;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;
import slipway.care.facts.EpisodeFacts;
import slipway.care.figure.ExerciseFigures;
import slipway.care.visit.VisitPlan;
import slipway.documents.guide.GuideOfVisit;
import slipway.documents.paper.PaperFrame;
import slipway.documents.paper.PaperInput;
import slipway.documents.paper.PaperKind;
import slipway.documents.paper.PaperPrinter;
import slipway.documents.paper.PaperWriter;
import slipway.documents.pdf.Paper;
import slipway.documents.pdf.PdfEngine;
import slipway.documents.sheet.HomeSheetPrinter;
import slipway.documents.sheet.SheetFormat;
import slipway.documents.visit.SheetOfVisit;
import slipway.exchange.fhir.EpisodeBundle;
import slipway.exchange.fhir.Export;
import slipway.exchange.fhir.Fhir;
import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Language;
import slipway.mechanics.body.Side;
import slipway.pictures.figure.Figure;
import slipway.pictures.look.Look;
import slipway.pictures.svg.Words;

/** From a plan and the record to pictures, paper and exchange. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class PapersBenchmark {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);
    private static final int REPORTS = 500;

    private final EpisodeFacts facts = ExampleFiles.facts();
    private final VisitPlan plan = ExampleFiles.plan(facts);
    private final EpisodeFacts reported = facts.withCheckIns(ExampleFiles.reports(plan, REPORTS));
    private final HomeSheetPrinter sheets = new HomeSheetPrinter(new PdfEngine());
    private final PaperPrinter papers = new PaperPrinter(new PdfEngine());
    private final List<Exercise> catalogue = Catalogue.bundled().list();
    private int next;

    /** One sheet for home on each of two cores at once. */
    @Benchmark
    @Threads(2)
    public byte[] sheet() {
        var sheet = SheetOfVisit.of(plan, Language.EN, DAY, "1");
        return sheets.print(sheet, new SheetFormat(Paper.A4, SheetFormat.Type.NORMAL))
                .pdf();
    }

    /** The moving guide. */
    @Benchmark
    public String guide() {
        return GuideOfVisit.html(plan, Language.EN, DAY, "1");
    }

    /** The start of one exercise after the other, solved and drawn. */
    @Benchmark
    public String figure() {
        Exercise exercise = catalogue.get(next++ % catalogue.size());
        Figure figure = Figure.of(
                ExerciseFigures.pose(exercise, exercise.movement().poses().get(0), Side.RIGHT));
        return figure.svg(Look.print(), new Words(exercise.id(), exercise.id(), "start"));
    }

    /** The progress report, with the load ruler and the course. */
    @Benchmark
    public byte[] progressReport() {
        PaperInput input = PaperInput.of(facts, plan, DAY, Optional.empty());
        var text = PaperWriter.write(PaperKind.PROGRESS_REPORT, input);
        return papers.print(text, PaperFrame.of(PaperKind.PROGRESS_REPORT, input), Paper.A4)
                .pdf();
    }

    /** An episode with 500 reports as FHIR. */
    @Benchmark
    public String fhir() {
        var export = new Export(reported, plan, Instant.parse("2026-07-30T10:00:00Z"), "benchmark", List.of());
        return Fhir.write(EpisodeBundle.of(export));
    }
}
