package slipway.care.record.caseload;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import slipway.care.record.Act;

/** Who is there. Rows are those that the act may see by the reach of its account. */
public interface Caseload {
    /**
     * Open episodes of a therapist: those with open alerts first, the longest waiting on top, then by the newest event.
     *
     * @param limit most rows, 1 to 500
     */
    List<TodayRow> today(String therapistId, int limit, Act act);

    /** Open episodes of the clinic of the act, in the same order. */
    List<TodayRow> today(int limit, Act act);

    /**
     * People of the clinic of the act by name.
     *
     * @param text beginning of the name or of one of its words, in any case and without regard to accents; empty for all
     * @param afterKey {@link PersonRow#afterKey()} of the last row of the page before; empty for the first page
     * @param limit most rows, 1 to 500
     */
    List<PersonRow> people(String text, String afterKey, int limit, Act act);

    /**
     * What decides by when papers of these episodes are due; those without paperwork in the record are left out.
     *
     * @param episodeIds at most 500
     */
    List<PaperTrailRow> paperTrails(Collection<String> episodeIds, Act act);

    /**
     * What counts of the episodes that were asked for, for figures over all of them. Episodes of erased people are left
     * out: nothing is left of them that counts.
     */
    List<OutcomeRow> outcomes(OutcomeAsk ask, Act act);

    /** The figures of the clinic of the act that were kept last; empty if there are none, or the act sees less than it. */
    Optional<KeptFigures> figures(Act act);

    /**
     * Keeps figures of the clinic of the act in the place of those before. They follow from the records, so that the trail
     * says nothing of it.
     *
     * @throws IllegalArgumentException if the act sees less than the clinic
     */
    void keep(KeptFigures figures, Act act);
}
