package slipway.web.episode.attempt;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.springframework.stereotype.Component;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.PlanVersion;
import slipway.care.record.papers.StoredDocument;
import slipway.care.visit.VisitPlan;
import slipway.documents.guide.GuideOfVisit;
import slipway.documents.pdf.Paper;
import slipway.documents.pdf.PdfEngine;
import slipway.documents.sheet.HomeSheet;
import slipway.documents.sheet.HomeSheetPrinter;
import slipway.documents.sheet.SheetFormat;
import slipway.documents.visit.SheetOfVisit;
import slipway.exercises.exercise.Language;
import slipway.web.episode.Cases;
import slipway.web.episode.plan.SetDoses;

/** Makes the sheet for home and the guide of a released plan, with the exercises that were tried and released. */
@Component
public class Sheets {
    private final Cases cases;
    private final HomeSheetPrinter printer = new HomeSheetPrinter(new PdfEngine());

    Sheets(Cases cases) {
        this.cases = cases;
    }

    /** In which language and how large. */
    public record Choice(Language language, SheetFormat format) {
        /** The choice of a form; empty if any word of it is unknown. */
        public static Optional<Choice> read(String language, String paper, String type) {
            Optional<Language> reads = Language.find(language);
            Optional<Paper> sheet = find(Paper.values(), paper);
            Optional<SheetFormat.Type> size = find(SheetFormat.Type.values(), type);
            return reads.isEmpty() || sheet.isEmpty() || size.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Choice(reads.get(), new SheetFormat(sheet.get(), size.get())));
        }

        private static <E extends Enum<E>> Optional<E> find(E[] values, String name) {
            for (E value : values) {
                if (value.name().toLowerCase(Locale.ROOT).equals(name)) {
                    return Optional.of(value);
                }
            }
            return Optional.empty();
        }
    }

    /** Makes and keeps sheet and guide; answers the sheet. */
    public StoredDocument make(Chart chart, PlanVersion plan, VisitPlan visit, List<String> released, Choice choice) {
        VisitPlan home = SetDoses.applied(chart, plan, visit).only(released);
        String version = SetDoses.version(chart, plan);
        byte[] pdf =
                printer.print(sheet(home, version, choice), choice.format()).pdf();
        String guide = GuideOfVisit.html(home, choice.language(), cases.today(), version);
        chart.documents()
                .add("guide", "text/html", guide.getBytes(StandardCharsets.UTF_8), OptionalInt.of(plan.number()));
        return chart.documents().add("sheet", "application/pdf", pdf, OptionalInt.of(plan.number()));
    }

    /** The sheet of a plan with a code that leads to an address; it is not kept, because the code is a secret. */
    public byte[] coded(
            Chart chart, PlanVersion plan, VisitPlan visit, List<String> released, Choice choice, String address) {
        VisitPlan home = SetDoses.applied(chart, plan, visit).only(released);
        HomeSheet sheet = sheet(home, SetDoses.version(chart, plan), choice).leadingTo(address);
        return printer.print(sheet, choice.format()).pdf();
    }

    private HomeSheet sheet(VisitPlan home, String version, Choice choice) {
        return choice.format().type() == SheetFormat.Type.LARGE
                ? SheetOfVisit.brief(home, choice.language(), cases.today(), version)
                : SheetOfVisit.of(home, choice.language(), cases.today(), version);
    }
}
