package slipway.care.record.chart;

import java.util.List;

/** The decisions in an episode. */
public interface Decisions {
    /** Keeps a decision of whoever opened the chart, now. */
    Decision add(String about, Verdict verdict, String proposed, String chosen, String reason);

    /** Oldest first. */
    List<Decision> list();

    /** Those about a subject or anything below it, oldest first. */
    List<Decision> about(String subject);
}
