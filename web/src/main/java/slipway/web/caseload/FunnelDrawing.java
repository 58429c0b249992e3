package slipway.web.caseload;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import slipway.pictures.course.FunnelPicture;
import slipway.pictures.look.Palette;
import slipway.reasoning.caseload.CaseloadReport;
import slipway.reasoning.caseload.Funnel;
import slipway.reasoning.caseload.Shown;
import slipway.web.episode.VisitPictures.Both;

/** The funnel of a report. */
final class FunnelDrawing {
    private static final int WIDTH = 342;

    /** More than the picture has room for. */
    private static final int MOST_LIMITS = 120;

    /** A funnel of one group says nothing: it is the whole. */
    private static final int LEAST_GROUPS = 2;

    private FunnelDrawing() {}

    static Optional<Both> of(CaseloadReport report, String measure) {
        if (report.groups().size() < LEAST_GROUPS) {
            return Optional.empty();
        }
        return target(report, measure).map(target -> {
            FunnelPicture.Funnel funnel = funnel(report, target);
            return new Both(
                    FunnelPicture.svg(funnel, Palette.PAPER, WIDTH, "funnel"),
                    FunnelPicture.svg(funnel, Palette.DARK, WIDTH, "funnel-dark"));
        });
    }

    private static Optional<Double> target(CaseloadReport report, String measure) {
        return report.measures().get(measure) instanceof Shown.Figure<CaseloadReport.OfMeasure> figure
                        && figure.value().better() instanceof Shown.Figure<Shown.Share> better
                ? Optional.of(better.value().value())
                : Optional.empty();
    }

    private static FunnelPicture.Funnel funnel(CaseloadReport report, double target) {
        int least = Shown.smallest();
        int most = report.groups().values().stream()
                .mapToInt(group -> group.better().of())
                .max()
                .orElse(least);
        // A little beyond the largest group, so that its point does not lie on the edge.
        List<FunnelPicture.Limit> limits = counts(least, most + most / 10 + 1)
                .mapToObj(people -> limit(target, people))
                .toList();
        List<FunnelPicture.Point> points = report.groups().values().stream()
                .map(group -> new FunnelPicture.Point(
                        group.better().count(), group.better().of(), group.place() != Funnel.Place.WITHIN))
                .sorted(java.util.Comparator.comparingInt(FunnelPicture.Point::people))
                .toList();
        return new FunnelPicture.Funnel(target, limits, points);
    }

    /** Every count while there are few; then the closer the smaller, where the limits bend. */
    private static IntStream counts(int least, int most) {
        return most - least < MOST_LIMITS
                ? IntStream.rangeClosed(least, most)
                : IntStream.rangeClosed(0, MOST_LIMITS)
                        .map(i -> least + (int) Math.round((most - least) * Math.pow((double) i / MOST_LIMITS, 2)))
                        .distinct();
    }

    private static FunnelPicture.Limit limit(double target, int people) {
        Funnel.Limits at = Funnel.limits(target, people);
        return new FunnelPicture.Limit(people, at.alarmLow(), at.warnLow(), at.warnHigh(), at.alarmHigh());
    }
}
