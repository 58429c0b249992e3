package slipway.web.caseload;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Function;
import slipway.documents.words.Words;
import slipway.reasoning.caseload.CaseloadReport;
import slipway.reasoning.caseload.Shown;
import slipway.reasoning.measures.Measure;
import slipway.reasoning.measures.Measures;
import slipway.web.episode.VisitPictures.Both;
import slipway.web.shell.Numbers;

/**
 * The figures in words.
 *
 * @param funnel empty if there are too few people, groups or differences for one
 */
public record CaseloadView(
        int episodes,
        List<Row> measures,
        String reportedDays,
        String discharge,
        String stalled,
        String funnelMeasure,
        Optional<Both> funnel) {
    public CaseloadView {
        measures = List.copyOf(measures);
    }

    /**
     * The changes on one measure.
     *
     * @param units in units of the least change that is more than error
     * @param points the same in points of the measure
     */
    public record Row(String name, String people, String units, String points, String better, String important) {}

    static CaseloadView of(CaseloadReport report, String funnelMeasure, Words words) {
        return new CaseloadView(
                report.episodes(),
                new TreeMap<>(report.measures())
                        .entrySet().stream()
                                .map(each -> row(Measures.bundled().get(each.getKey()), each.getValue(), words))
                                .toList(),
                figure(report.reportedDays(), words, each -> quartiles(each, 100, "%.0f", words) + " %"),
                figure(report.medianDaysToDischarge(), words, each -> days(each, words)),
                figure(report.stalled(), words, each -> share(each, words)),
                funnelMeasure.isEmpty()
                        ? ""
                        : Measures.bundled().get(funnelMeasure).name(),
                FunnelDrawing.of(report, funnelMeasure));
    }

    private static Row row(Measure measure, Shown<CaseloadReport.OfMeasure> shown, Words words) {
        if (!(shown instanceof Shown.Figure<CaseloadReport.OfMeasure> figure)) {
            String few = few(words);
            return new Row(measure.name(), few, "–", "–", "–", "–");
        }
        var thresholds = measure.thresholds();
        OptionalDouble mdc =
                thresholds.mdc().map(each -> OptionalDouble.of(each.value())).orElse(OptionalDouble.empty());
        boolean known = thresholds.mcid().isPresent() || thresholds.mcidShare().isPresent();
        String none = words.get("none.published");
        CaseloadReport.OfMeasure value = figure.value();
        return new Row(
                measure.name(),
                Integer.toString(figure.people()),
                mdc.isPresent() ? quartiles(value.gain(), 1 / mdc.getAsDouble(), "%+.1f", words) : none,
                quartiles(value.gain(), 1, "%+.1f", words),
                mdc.isPresent() ? figure(value.better(), words, each -> share(each, words)) : none,
                mdc.isPresent() && known ? figure(value.important(), words, each -> share(each, words)) : none);
    }

    private static <T> String figure(Shown<T> shown, Words words, Function<T, String> text) {
        return shown instanceof Shown.Figure<T> figure ? text.apply(figure.value()) : few(words);
    }

    private static String few(Words words) {
        return words.get("few", Shown.smallest());
    }

    private static String days(OptionalInt median, Words words) {
        return median.isPresent() ? words.get("days", median.getAsInt()) : words.get("days.not.yet");
    }

    private static String share(Shown.Share share, Words words) {
        return words.get("share", share.count(), share.of(), Numbers.percent(share.value()));
    }

    private static String quartiles(CaseloadReport.Quartiles of, double factor, String form, Words words) {
        return words.get(
                "quartiles",
                number(of.middle() * factor, form),
                number(of.lower() * factor, form),
                number(of.upper() * factor, form));
    }

    private static String number(double value, String form) {
        String text = String.format(java.util.Locale.ROOT, form, value);
        return text.matches("[+-]0(\\.0)?") ? text.substring(1) : text.replace('-', '−');
    }
}
