package slipway.study.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slipway.pictures.svg.Words;
import slipway.study.run.Measure;
import slipway.study.run.Tally;
import slipway.study.statistics.Spread95;

/** The plots of the report, as SVG. */
final class Plots {
    private static final int ROW = 22;
    private static final int TOP = 46;
    private static final int FOOT = 30;
    private static final int CURVE_HEIGHT = 300;
    private static final List<String> DASHES =
            List.of("", "6 3", "2 3", "8 3 2 3", "1 2", "10 4", "4 2", "3 5", "12 3 3 3");

    private Plots() {}

    /** Flare days of the program over those of the main comparator, world by world. */
    static String ratioByWorld(StudyResults results) {
        var labels = new ArrayList<String>();
        var spreads = new ArrayList<Spread95>();
        results.plan().worlds().forEach(world -> {
            labels.add(world.id());
            spreads.add(results.get(StudyResults.PROGRAM, world.id())
                    .paired(Measure.FLARE_DAYS)
                    .ratio());
        });
        labels.add("plausible together");
        spreads.add(results.get(StudyResults.PROGRAM, StudyResults.ALL_PLAUSIBLE)
                .paired(Measure.FLARE_DAYS)
                .ratio());
        return intervals("ratio", "Flare days, program over main comparator", labels, spreads, 0, 1.6, 0.2, 1);
    }

    /** Flare days a person of every way in the plausible worlds. */
    static String flaresByPolicy(StudyResults results) {
        return byPolicy(results, "flares", "Flare days a person, plausible worlds", Measure.FLARE_DAYS, 1);
    }

    /** Days until the goal of every way in the plausible worlds. */
    static String goalByPolicy(StudyResults results) {
        return byPolicy(results, "goal", "Days until the goal, plausible worlds", Measure.DAYS_TO_GOAL, 7);
    }

    private static String byPolicy(StudyResults results, String id, String title, Measure measure, double step) {
        var labels = new ArrayList<String>();
        var spreads = new ArrayList<Spread95>();
        for (Result result : results.plausible()) {
            labels.add(result.policy());
            spreads.add(result.mean(measure));
        }
        double most = spreads.stream().mapToDouble(Spread95::high).max().orElse(1);
        double end = step * Math.ceil(most / step);
        return intervals(
                id, title, labels, spreads, 0, end, step, spreads.get(0).value());
    }

    private static String intervals(
            String id,
            String title,
            List<String> labels,
            List<Spread95> spreads,
            double least,
            double most,
            double step,
            double reference) {
        int foot = TOP + ROW * labels.size();
        var words = new StringBuilder();
        for (int i = 0; i < labels.size(); i++) {
            words.append(labels.get(i)).append(' ').append(told(spreads.get(i))).append("; ");
        }
        var plot = new Plot(new Words(id, title, words.toString()), foot + FOOT, least, most);
        plot.scale(TOP - 8, foot, step);
        plot.line(plot.px(reference), TOP - 8, plot.px(reference), foot, Plot.INK, 1, "4 3");
        for (int i = 0; i < labels.size(); i++) {
            double y = TOP + ROW * i + ROW / 2.0;
            Spread95 spread = spreads.get(i);
            plot.label(16, y + 4, "start", labels.get(i));
            if (Double.isFinite(spread.value())) {
                plot.line(plot.px(spread.low()), y, plot.px(spread.high()), y, Plot.INK, 2, "");
                boolean stands = labels.get(i).equals(StudyResults.PROGRAM)
                        || labels.get(i).startsWith("plausible");
                plot.dot(plot.px(spread.value()), y, stands);
            }
        }
        return plot.finish();
    }

    private static String told(Spread95 spread) {
        return String.format(Locale.ROOT, "%.2f (%.2f to %.2f)", spread.value(), spread.low(), spread.high());
    }

    /** Share of people who have reached the goal by each day, in the plausible worlds. */
    static String goalOverTime(StudyResults results) {
        int days = results.plan().days();
        var plot = new Plot(
                new Words("reached", "Share at the goal by day, plausible worlds", endShares(results)),
                CURVE_HEIGHT + FOOT,
                0,
                days);
        double foot = CURVE_HEIGHT - 10;
        plot.scale(TOP, foot, 7);
        for (double share = 0; share <= 1.001; share += 0.25) {
            double y = foot - share * (foot - TOP);
            plot.line(Plot.LEFT, y, Plot.RIGHT, y, Plot.SOFT, 0.5, "");
            plot.label(Plot.LEFT - 8, y + 4, "end", String.format(Locale.ROOT, "%.0f %%", 100 * share));
        }
        for (Result result : results.plausible()) {
            draw(plot, result, days, foot);
        }
        return plot.finish();
    }

    private static void draw(Plot plot, Result result, int days, double foot) {
        double[] x = new double[days];
        double[] y = new double[days];
        Tally tally = result.tally();
        long reached = 0;
        for (int day = 0; day < days; day++) {
            reached += tally.goalOn(result.index(), day);
            x[day] = plot.px(day);
            y[day] = foot - (double) reached / tally.people() * (foot - TOP);
        }
        boolean program = result.policy().equals(StudyResults.PROGRAM);
        String dashes = DASHES.get(result.index() % DASHES.size());
        plot.curve(x, y, program ? Plot.ACCENT : Plot.INK, program ? 3 : 1.2, dashes);
        double keyY = TOP + 14 + 16 * result.index();
        plot.line(16, keyY - 4, 56, keyY - 4, program ? Plot.ACCENT : Plot.INK, program ? 3 : 1.2, dashes);
        plot.label(62, keyY, "start", result.policy());
    }

    private static String endShares(StudyResults results) {
        var words = new StringBuilder("At the last day: ");
        for (Result result : results.plausible()) {
            long never = result.tally().goalOn(result.index(), results.plan().days());
            words.append(String.format(
                    Locale.ROOT,
                    "%s %.0f %%; ",
                    result.policy(),
                    100.0 * (result.tally().people() - never) / result.tally().people()));
        }
        return words.toString();
    }
}
