package slipway.study.report;

import java.util.List;
import java.util.Locale;
import slipway.study.policy.Policy;
import slipway.study.run.Measure;
import slipway.study.statistics.Spread95;
import slipway.study.world.World;

/** The results as one page: what was asked, the aim and whether it is met, plots, tables, and what it cannot show. */
public final class ReportHtml {
    private static final String STYLE =
            "body{font-family:sans-serif;max-width:60em;margin:2em auto;padding:0 1em;color:#222;line-height:1.45}"
                    + "table{border-collapse:collapse;margin:1em 0;font-size:.9em}"
                    + "th,td{border-bottom:1px solid #999;padding:.25em .6em;text-align:right}"
                    + "th:first-child,td:first-child{text-align:left}caption{text-align:left;font-weight:bold}"
                    + ".wide{overflow-x:auto}svg{max-width:100%;height:auto}.told{border-left:4px solid #555;padding-left:1em}";
    private static final List<String> CANNOT = List.of(
            "Nothing here is evidence that nerve glides help, or that any way of dosing is safe for a person. It shows what"
                    + " follows from assumptions.",
            "Nobody has measured the distributions that the simulated people are drawn from; most are marked as assumptions."
                    + " The order of two ways of dosing can be read, the size of their difference hardly.",
            "The people follow equations of their own, not those of the program's estimate; but the same authors wrote both,"
                    + " and both think in loads and thresholds.",
            "Loads come from the same nerve model that the program plans with; each person has another nerve of its draws,"
                    + " but what the model gets wrong for everybody is wrong for both.",
            "Fewer flares can be bought with less work: who does nothing flares least. Read flares beside dose and goal.",
            "The program's way was changed after its first score (docs/validation-study.md); scores of the same people as then"
                    + " flatter it.",
            "The therapist of the simulation does not think: no change of exercise for other reasons, no talk, no fear.",
            "Intervals are those of sampling simulated people. They say nothing of how wrong the worlds are.");

    private ReportHtml() {}

    /** The text of the file. */
    public static String of(StudyResults results) {
        var page = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">"
                + "<meta name=\"viewport\" content=\"width=device-width\"><title>Study on simulated people</title><style>"
                + STYLE + "</style></head><body><main>\n<h1>Study on simulated people</h1>\n");
        page.append(head(results));
        page.append("<p class=\"told\">")
                .append(escaped(Verdict.of(results).words()))
                .append("</p>\n");
        page.append("<h2>Plausible worlds together</h2>\n");
        page.append(Plots.flaresByPolicy(results)).append(Plots.goalByPolicy(results));
        page.append(Plots.goalOverTime(results)).append(table(results, StudyResults.ALL_PLAUSIBLE));
        page.append("<h2>World by world</h2>\n").append(Plots.ratioByWorld(results));
        for (World world : results.plan().worlds()) {
            String kind = world.plausible() ? "plausible" : "wrong on purpose";
            page.append("<h3>%s (%s)</h3>\n<p>%s</p>\n".formatted(world.id(), kind, escaped(world.words())));
            page.append(table(results, world.id()));
        }
        page.append("<h2>What this cannot show</h2>\n<ul>\n");
        CANNOT.forEach(sentence -> page.append("<li>").append(sentence).append("</li>\n"));
        page.append("</ul>\n<p>Run: ")
                .append(escaped(results.plan().fingerprint()))
                .append("</p>\n");
        return page.append("</main></body></html>\n").toString();
    }

    private static String head(StudyResults results) {
        var text = new StringBuilder("""
                <p>Invented people, %d in every world, followed for %d days under every way of dosing with the same days and
                the same chance (seed %d). <strong>A simulation is not clinical evidence.</strong> Flare days count every
                day with a flare (worst at least 4 above before, longer than 10 minutes to settle, or a worse morning),
                also those that come without exercise. Intervals hold 95 %%, differences are paired. The goal is a leg raise
                of 70 degrees before symptoms begin; who does not reach it counts with the last day.</p>
                <table><caption>Ways of dosing</caption>
                """.formatted(
                results.plan().people(), results.plan().days(), results.plan().seed()));
        for (Policy policy : results.plan().policies()) {
            text.append("<tr><th scope=\"row\">%s</th><td style=\"text-align:left\">%s</td></tr>\n"
                    .formatted(policy.id(), escaped(policy.words())));
        }
        return text.append("</table>\n").toString();
    }

    private static String table(StudyResults results, String world) {
        var text = new StringBuilder("<div class=\"wide\"><table><caption>" + world + "</caption><tr><th>way</th>"
                + "<th>flare days</th><th>ratio</th><th>effect size</th><th>days to full range</th><th>days to goal</th>"
                + "<th>at goal, last day</th><th>repetitions</th><th>dose</th><th>signs of danger</th>"
                + "<th>missed</th><th>days to answer</th></tr>\n");
        for (Result result : results.in(world)) {
            text.append("<tr><th scope=\"row\">").append(result.policy()).append("</th>");
            cell(text, told(result.mean(Measure.FLARE_DAYS), "%.2f"));
            cell(text, told(result.paired(Measure.FLARE_DAYS).ratio(), "%.2f"));
            cell(text, number(result.paired(Measure.FLARE_DAYS).effectSize(), "%.2f"));
            cell(text, told(result.mean(Measure.DAYS_TO_FULL_RANGE), "%.1f"));
            cell(text, told(result.mean(Measure.DAYS_TO_GOAL), "%.1f"));
            cell(text, told(result.mean(Measure.GOAL), "%.3f"));
            cell(text, number(result.mean(Measure.REPETITIONS).value(), "%.0f"));
            cell(text, number(result.mean(Measure.DOSE_PER_MILLE).value() / 1000, "%.0f"));
            cell(text, Long.toString(result.tally().sum(result.index(), Measure.EVENTS)));
            cell(text, Long.toString(result.missedSafety()));
            cell(text, number(result.daysToAnswer(), "%.1f"));
            text.append("</tr>\n");
        }
        return text.append("</table></div>\n").toString();
    }

    private static void cell(StringBuilder text, String content) {
        text.append("<td>").append(content).append("</td>");
    }

    private static String told(Spread95 spread, String format) {
        return Double.isFinite(spread.value())
                ? String.format(
                        Locale.ROOT,
                        format + " (" + format + "–" + format + ")",
                        spread.value(),
                        spread.low(),
                        spread.high())
                : "–";
    }

    private static String number(double value, String format) {
        return Double.isFinite(value) ? String.format(Locale.ROOT, format, value) : "–";
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
