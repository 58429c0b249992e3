package slipway.benchmarks.papers;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import slipway.care.follow.Follow;
import slipway.care.follow.FollowPlans;
import slipway.care.visit.VisitPlan;
import slipway.reasoning.response.checkin.CheckIn;
import slipway.reasoning.response.propose.Followed;
import slipway.reasoning.response.propose.FollowedPlan;

/** What one report costs: rules, filter and proposal, from the log of a person, per report. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ResponseBenchmark {
    private static final int REPORTS = 100;

    private final VisitPlan visit = ExampleFiles.plan(ExampleFiles.facts());
    private final FollowedPlan plan = FollowPlans.of(visit);
    private final List<CheckIn> reports = ExampleFiles.reports(visit, REPORTS);

    /** All reports of a person anew, as after a late one. */
    @Benchmark
    @OperationsPerInvocation(REPORTS)
    public Followed report() {
        return Follow.of(plan, reports, List.of(), List.of(), Optional.empty());
    }
}
