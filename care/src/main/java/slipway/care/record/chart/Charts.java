package slipway.care.record.chart;

import java.util.List;
import java.util.Map;
import slipway.care.record.Act;
import slipway.care.record.content.Section;
import slipway.mechanics.body.Side;
import tools.jackson.databind.node.ObjectNode;

/** The charts of all episodes. */
public interface Charts {
    /**
     * Opens the chart of an episode for whoever acts. Denied unless allowed: a therapist or assistant by the reach of the
     * account (own, team or clinic), a lead in the own clinic, a patient by the access link whose id the act names, the
     * program always, everybody else by a break-glass grant. The opening is noted in the trail as a reading, at most once
     * per person, user and hour.
     */
    Opening open(String episodeId, Act act);

    /**
     * Begins an episode and opens its chart.
     *
     * @param therapistId account of the therapist in charge
     * @param content what is known already, from an imported case; empty for a new one
     */
    Chart begin(String personId, Side side, String therapistId, Map<Section, ObjectNode> content, Act act);

    /** All episodes of a person that the act may see, newest first. */
    List<Episode> ofPerson(String personId, Act act);
}
