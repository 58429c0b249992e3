package slipway.documents.paper;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipway.exercises.exercise.Language;
import slipway.reasoning.response.checkin.CheckIn;
import slipway.reasoning.response.checkin.Session;
import slipway.reasoning.response.course.Flare;
import slipway.reasoning.response.propose.Followed;
import slipway.reasoning.response.propose.RespondResult;

/** What was reported from home. Reports are told as reports. */
final class HomeParts {
    private final Writing out;
    private final PaperInput in;

    HomeParts(Writing out, PaperInput in) {
        this.out = out;
        this.in = in;
    }

    void home() {
        out.part("home");
        List<CheckIn> reports = in.facts().checkIns().stream()
                .filter(report -> !report.reportedAt().toLocalDate().isAfter(in.day()))
                .toList();
        if (reports.isEmpty()) {
            out.blank("none", "label.home", "episode/checkIns");
            return;
        }
        Map<String, Session> sessions = sessions(reports);
        long done =
                sessions.values().stream().filter(session -> !session.rest()).count();
        long flares = sessions.values().stream().filter(Flare::reported).count();
        out.say(
                "sessions",
                out.words()
                        .get(
                                "home.sessions",
                                done,
                                reports.get(0).startedAt().toLocalDate(),
                                reports.get(reports.size() - 1).startedAt().toLocalDate(),
                                flares),
                "episode/checkIns");
        out.fixed("home.reported");
        in.followed().ifPresent(followed -> doses(reports, followed));
    }

    /** Several reports on one session are one session. */
    static Map<String, Session> sessions(List<CheckIn> reports) {
        var sessions = new LinkedHashMap<String, Session>();
        reports.forEach(report -> sessions.merge(report.sessionId(), Session.of(report), Session::with));
        return sessions;
    }

    /** What is in force of each exercise after its last report. A stop that was not released comes first and alone. */
    private void doses(List<CheckIn> reports, Followed followed) {
        if (followed.state().lock().isPresent()) {
            String decision = followed.state().lock().get().key();
            out.say("stopped", out.words().get("home.stopped", decision), "episode/checkIns");
            return;
        }
        var exercises = new HashMap<String, String>();
        reports.forEach(report -> exercises.put(report.id(), report.answersFor()));
        var last = new LinkedHashMap<String, RespondResult>();
        followed.results().forEach(result -> last.put(exercises.getOrDefault(result.checkinId(), ""), result));
        last.forEach(this::dose);
    }

    private void dose(String id, RespondResult result) {
        String name = Optional.ofNullable(in.plan().exercises().get(id))
                .map(exercise -> exercise.name().in(Language.EN))
                .orElse(id);
        String source = "checkIn/" + result.checkinId();
        if (result.nextDose().isEmpty()) {
            out.say("rested-" + id, out.words().get("home.rested", name), source);
            return;
        }
        var next = result.nextDose().get().dose();
        out.say(
                "dose-" + id,
                out.words()
                        .get(
                                "home.dose",
                                name,
                                next.repetitions(),
                                next.sets(),
                                next.sessionsPerDay(),
                                Math.round(100 * next.rangeFraction())),
                source);
    }
}
