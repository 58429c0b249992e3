package slipway.benchmarks;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import slipway.mechanics.body.Side;
import slipway.reasoning.findings.Finding;
import slipway.reasoning.findings.FindingKind;
import slipway.reasoning.findings.Result;
import slipway.reasoning.locate.LocateRequest;
import slipway.reasoning.locate.Location;
import slipway.reasoning.locate.Locator;
import slipway.reasoning.locate.SitePrior;
import slipway.reasoning.screening.Region;

/** Locating from 60 findings: the ranking alone, and with its intervals and basis. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class LocateBenchmark {
    private static final List<String> MUSCLES = List.of(
            "iliopsoas",
            "quadriceps",
            "hip_adductors",
            "gluteus_medius",
            "gluteus_maximus",
            "semitendinosus",
            "semimembranosus",
            "tibialis_anterior",
            "extensor_hallucis_longus",
            "extensor_digitorum_longus",
            "fibularis_longus",
            "tibialis_posterior",
            "gastrocnemius",
            "soleus",
            "flexor_hallucis_longus");
    private static final List<String> AREAS = List.of(
            "L2_dermatome",
            "L3_dermatome",
            "L4_dermatome",
            "L5_dermatome",
            "S1_dermatome",
            "S2_dermatome",
            "dorsum_foot",
            "lateral_leg",
            "medial_leg",
            "sole",
            "lateral_foot",
            "posterior_thigh");
    private static final List<String> REFLEXES = List.of("patellar", "achilles", "medial_hamstring");

    private Locator locator = Locator.load(Region.LEG, SitePrior.load(SitePrior.OUTPATIENT));
    private LocateRequest request = new LocateRequest(findings(), EnumSet.of(Side.LEFT));

    /** An L5 pattern on the left, everything on the right normal: 15 + 12 + 3 items on two sides. */
    static List<Finding> findings() {
        var findings = new ArrayList<Finding>();
        for (Side side : Side.values()) {
            boolean left = side == Side.LEFT;
            for (String muscle : MUSCLES) {
                boolean weak = left && (muscle.startsWith("extensor") || muscle.equals("gluteus_medius"));
                findings.add(Finding.of(FindingKind.STRENGTH, muscle, side, new Result.Grade(weak ? 4 : 5)));
            }
            for (String area : AREAS) {
                boolean less = left && area.equals("dorsum_foot");
                findings.add(
                        Finding.of(FindingKind.SENSATION, area, side, less ? Result.Word.REDUCED : Result.Word.NORMAL));
            }
            REFLEXES.forEach(reflex -> findings.add(Finding.of(FindingKind.REFLEX, reflex, side, Result.Word.NORMAL)));
        }
        return findings;
    }

    /** The ranking alone. */
    @Benchmark
    public Location rank() {
        return locator.rank(request);
    }

    /** With intervals from the uncertainty of the coefficients, for and against. */
    @Benchmark
    public Location locate() {
        return locator.locate(request);
    }
}
