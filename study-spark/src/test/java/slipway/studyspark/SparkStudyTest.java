package slipway.studyspark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import slipway.study.load.LoadTable;
import slipway.study.load.LoadTables;
import slipway.study.report.StudyCsv;
import slipway.study.report.StudyResults;
import slipway.study.report.SummaryJson;
import slipway.study.run.ProgramVersion;
import slipway.study.run.Simulation;
import slipway.study.run.StudyPlan;
import slipway.study.run.StudyRun;
import slipway.study.run.StudyState;

/** Against the run on one machine; Spark runs in this process, on two threads, and writes to bytes what it hands out. */
class SparkStudyTest {
    /** Two batches of each of the twelve worlds, the second a short one: 24 in all, so that seven parts are unequal. */
    private static final StudyPlan PLAN = new StudyPlan(60, 10, 7, ProgramVersion.NUMBER);

    private static final List<String> SETTINGS =
            List.of("spark.master", "spark.ui.enabled", "spark.driver.host", "spark.driver.bindAddress");
    private static LoadTable loads;
    private static StudyResults local;

    @BeforeAll
    static void settingsAsOfSparkSubmit() {
        List<String> values = List.of("local[2]", "false", "localhost", "127.0.0.1");
        for (int i = 0; i < values.size(); i++) {
            System.setProperty(SETTINGS.get(i), values.get(i));
        }
        loads = LoadTables.compute();
        var state = new StudyState(PLAN);
        new StudyRun(new Simulation(loads)).run(state, 2, () -> false, () -> {});
        local = StudyResults.of(state);
    }

    @AfterAll
    static void settingsGone() {
        SETTINGS.forEach(System::clearProperty);
    }

    @Test
    void theSummaryIsThatOfOneMachineToTheLastBitHoweverThePeopleAreDivided() {
        var found = new ArrayList<StudyResults>();
        try (var spark = new JavaSparkContext(new SparkConf().setAppName("test"))) {
            for (int partitions : new int[] {1, 2, 7}) {
                found.add(StudyResults.of(PLAN, new SparkStudy(spark, loads).run(PLAN, partitions)));
            }
        }
        assertThat(found).hasSize(3).allSatisfy(results -> {
            assertThat(SummaryJson.of(results)).isEqualTo(SummaryJson.of(local));
            assertThat(StudyCsv.of(results)).isEqualTo(StudyCsv.of(local));
        });
    }

    @Test
    void theJobWritesTheFilesOfTheCommand(@TempDir Path folder) throws IOException {
        int status = new CommandLine(new StudyJob())
                .execute("--people", "60", "--days", "10", "--seed", "7", "--out", folder.toString());
        assertThat(status).isZero();
        assertThat(folder.resolve("summary.json")).hasContent(SummaryJson.of(local));
        assertThat(folder.resolve("study.csv")).hasContent(StudyCsv.of(local));
        try (var files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder("report.html", "study.csv", "summary.json");
        }
    }
}
