package slipway.reasoning.response.propose;

import java.util.Collection;
import slipway.reasoning.response.checkin.Session;
import slipway.reasoning.response.course.Flare;
import slipway.reasoning.response.estimate.EstimateSettings;

/** Flares on days of rest. */
final class RestFlares {
    private RestFlares() {}

    /** Chance of a flare on a day of rest: the population's, moved by this person's own days of rest. */
    static double chance(Collection<Session> sessions) {
        double flares = EstimateSettings.REST_FLARE * EstimateSettings.REST_WEIGHT_DAYS;
        double days = EstimateSettings.REST_WEIGHT_DAYS;
        for (Session session : sessions) {
            if (session.rest()) {
                flares += Flare.reported(session) ? 1 : 0;
                days++;
            }
        }
        return flares / days;
    }
}
