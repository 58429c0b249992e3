package slipway.web.remind;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.access.LinkPurpose;
import slipway.care.record.chart.Chart;
import slipway.care.record.chart.Episode;
import slipway.care.record.chart.EpisodeState;
import slipway.care.record.chart.PlanVersion;
import slipway.care.record.remind.Due;
import slipway.web.episode.home.HomeCourse;

/** Decides whether a person needs a reminder. In doubt none is sent. */
@Component
class Needs {
    /** After so many days without a report a person is asked kindly, not reminded daily; common practice. */
    static final int SILENT_DAYS = 7;

    /** And asked at most once in so many days; common practice. */
    static final int ASK_EVERY_DAYS = 3;

    private final Records records;
    private final HomeCourse course;

    Needs(Records records, HomeCourse course) {
        this.records = records;
        this.course = course;
    }

    /**
     * What a person needs on a day.
     *
     * @param zone that of the clinic
     */
    Need of(Due due, LocalDate day, Instant now, ZoneId zone) {
        Optional<LocalDate> heard = due.heardAt().map(at -> LocalDate.ofInstant(at, zone));
        if (heard.filter(last -> !last.isBefore(day)).isPresent()) {
            return Need.NONE;
        }
        Optional<LocalDate> given = newestPlan(due, now).map(at -> LocalDate.ofInstant(at, zone));
        if (given.isEmpty()) {
            return Need.NONE;
        }
        LocalDate since = heard.filter(given.get()::isBefore).orElse(given.get());
        if (ChronoUnit.DAYS.between(since, day) < SILENT_DAYS) {
            return Need.TODAY;
        }
        boolean lately = due.lastSent()
                .filter(sent -> ChronoUnit.DAYS.between(sent, day) < ASK_EVERY_DAYS)
                .isPresent();
        return lately ? Need.NONE : Need.ASK;
    }

    /** When the newest plan was given that the person has at home; empty if there is none, or anything rests. */
    private Optional<Instant> newestPlan(Due due, Instant now) {
        var act = new Act("reminders", Role.PROGRAM, due.clinicId(), now);
        var given = new ArrayList<Instant>();
        for (Episode episode : records.charts().ofPerson(due.personId(), act)) {
            Optional<Chart> chart = Optional.of(episode)
                    .filter(each -> each.state() != EpisodeState.CLOSED)
                    .flatMap(each -> records.charts().open(each.id(), act).chartIfOpen());
            Optional<HomeCourse.Home> home = chart.flatMap(course::home);
            if (home.isEmpty() || home.get().exercises().isEmpty()) {
                continue;
            }
            if (course.rests(chart.get(), home.get())) {
                return Optional.empty();
            }
            if (hasCode(episode, act)) {
                PlanVersion plan = home.get().plan();
                given.add(plan.releasedAt().orElse(plan.madeAt()));
            }
        }
        return given.stream().max(Instant::compareTo);
    }

    /** Without a code that holds there is no page to open. */
    private boolean hasCode(Episode episode, Act act) {
        List<slipway.care.record.access.AccessLink> links = records.links().list(episode.id(), act);
        return links.stream().anyMatch(link -> link.purpose() == LinkPurpose.GUIDE && link.isUsableAt(act.at()));
    }
}
