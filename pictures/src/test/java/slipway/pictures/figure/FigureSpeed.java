package slipway.pictures.figure;

import java.lang.management.ManagementFactory;
import java.util.List;
import slipway.pictures.look.Look;
import slipway.pictures.svg.Words;

/** Prints how long figures take, warm. Not a test: machines differ. */
final class FigureSpeed {
    private FigureSpeed() {}

    public static void main(String[] args) {
        List<FigureScene> scenes = List.copyOf(Postures.all().values());
        var words = new Words("f", "t", "d");
        long characters = 0;
        for (int round = 0; round < 60; round++) {
            long start = cpuNanos();
            for (int i = 0; i < 10; i++) {
                for (FigureScene scene : scenes) {
                    characters += Figure.of(scene).svg(Look.paper(), words).length();
                }
            }
            double each = (cpuNanos() - start) / 1e6 / (10 * scenes.size());
            if (round % 10 == 9) {
                System.out.printf("%.3f ms of processor a figure (%d characters so far)%n", each, characters);
            }
        }
    }

    /** Processor time of this thread: a busy machine does not count. */
    private static long cpuNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
