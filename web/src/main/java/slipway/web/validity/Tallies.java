package slipway.web.validity;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.stereotype.Component;
import slipway.care.record.Act;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.care.record.caseload.PersonRow;
import slipway.care.record.chart.Chart;
import slipway.reasoning.response.calibration.Week;
import slipway.reasoning.response.calibration.Weeks;
import slipway.reasoning.response.propose.Followed;
import slipway.reasoning.response.propose.RespondResult;
import slipway.web.episode.home.HomeCourse;

/**
 * Counts over all records of a clinic, one clinic at a time and beside everything else. The program reads them, not
 * whoever asked: only sums come out, and the trail of each person says that the program read.
 */
@Component
class Tallies implements DisposableBean {
    private static final Logger LOG = LoggerFactory.getLogger(Tallies.class);
    private static final int PAGE = 200;

    private final Records records;
    private final HomeCourse course;
    private final Clock clock;
    private final Map<String, Counting> byClinic = new ConcurrentHashMap<>();
    private final Map<String, Boolean> stop = new ConcurrentHashMap<>();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "count");
        thread.setDaemon(true);
        return thread;
    });

    Tallies(Records records, HomeCourse course, Clock clock) {
        this.records = records;
        this.course = course;
        this.clock = clock;
    }

    Counting of(String clinicId) {
        return byClinic.getOrDefault(clinicId, Counting.NONE);
    }

    /** Begins to count unless it goes on already. */
    void start(String clinicId) {
        boolean[] begins = {false};
        byClinic.compute(clinicId, (id, known) -> {
            begins[0] = known == null || !known.running();
            return begins[0]
                    ? new Counting(true, 0, 0, false, known == null ? Optional.empty() : known.tally())
                    : known;
        });
        if (begins[0]) {
            stop.remove(clinicId);
            worker.execute(() -> run(clinicId));
        }
    }

    /** Done when everything that was begun so far is over. */
    Future<?> idle() {
        return worker.submit(() -> {});
    }

    /** Breaks off; the result before stays. */
    void cancel(String clinicId) {
        stop.put(clinicId, true);
    }

    private void run(String clinicId) {
        Optional<Tally> before = of(clinicId).tally();
        try {
            Optional<Tally> counted = count(clinicId);
            byClinic.put(clinicId, new Counting(false, 0, 0, false, counted.or(() -> before)));
        } catch (RuntimeException e) {
            LOG.warn(
                    "counting the records of clinic {} broke off: {}",
                    clinicId,
                    e.getClass().getName());
            byClinic.put(clinicId, new Counting(false, 0, 0, true, before));
        }
    }

    private Optional<Tally> count(String clinicId) {
        Act act = new Act("validity", Role.PROGRAM, clinicId, clock.instant());
        List<String> episodes = episodes(act);
        var sum = new Sum();
        for (int i = 0; i < episodes.size(); i++) {
            if (stop.containsKey(clinicId)) {
                return Optional.empty();
            }
            records.charts().open(episodes.get(i), act).chartIfOpen().ifPresent(chart -> add(sum, chart));
            int done = i + 1;
            byClinic.computeIfPresent(
                    clinicId, (id, known) -> new Counting(true, done, episodes.size(), false, known.tally()));
        }
        return Optional.of(sum.tally(act.at()));
    }

    private List<String> episodes(Act act) {
        var episodes = new ArrayList<String>();
        String after = "";
        List<PersonRow> page = records.caseload().people("", after, PAGE, act);
        while (!page.isEmpty()) {
            page.forEach(row -> row.newestEpisodeId().ifPresent(episodes::add));
            after = page.get(page.size() - 1).afterKey();
            page = records.caseload().people("", after, PAGE, act);
        }
        return episodes;
    }

    private void add(Sum sum, Chart chart) {
        if (chart.checkIns().newest().isPresent()) {
            course.home(chart).ifPresent(home -> sum.add(course.followed(chart, home)));
        }
    }

    /** What was counted so far; of one thread. */
    private static final class Sum {
        private final Map<String, Integer> fired = new HashMap<>();
        private final List<Week> weeks = new ArrayList<>();
        private int people;
        private int reports;
        private int leftOut;

        void add(Followed followed) {
            if (followed.results().isEmpty()) {
                return;
            }
            people++;
            for (RespondResult result : followed.results()) {
                reports++;
                result.rules().forEach(rule -> fired.merge(rule, 1, Integer::sum));
            }
            Weeks counted = followed.weeks();
            weeks.addAll(counted.weeks());
            leftOut += counted.leftOut();
        }

        Tally tally(Instant at) {
            return new Tally(at, people, reports, fired, weeks, leftOut);
        }
    }

    @Override
    public void destroy() {
        worker.shutdownNow();
    }
}
