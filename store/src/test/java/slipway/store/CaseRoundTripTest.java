package slipway.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slipway.care.casefile.CaseFile;
import slipway.care.casefile.CaseFiles;
import slipway.care.record.assembly.Assembly;
import slipway.care.record.assembly.CaseAssembly;
import slipway.care.record.assembly.CaseSplit;
import slipway.care.record.chart.Chart;

class CaseRoundTripTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @ParameterizedTest
    @EnumSource
    void aCaseComesOutOfTheDatabaseAsItWentIn(Databases kind) throws IOException {
        try (var world = new World(kind);
                Stream<Path> files = Files.list(Path.of("../examples"))) {
            List<Path> cases = files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
            assertThat(cases).hasSizeGreaterThan(5);
            for (Path file : cases) {
                byte[] bytes = Files.readAllBytes(file);
                Assembly.Complete out = through(world, bytes, file.getFileName().toString())
                        .complete()
                        .orElseThrow();
                assertThat(values(out.file())).isEqualTo(values(CaseFiles.read(bytes, "case")));
            }
        }
    }

    /** Findings carry the line they stood in, for messages; apart from that the values must be equal. */
    private static String values(CaseFile file) {
        return file.toString().replaceAll("line \\d+", "");
    }

    private static Assembly through(World world, byte[] bytes, String name) {
        CaseSplit split = CaseSplit.read(bytes, name, DAY);
        String personId =
                world.records.people().add(split.person(), World.PROGRAM).id();
        String episodeId = world.records
                .charts()
                .begin(personId, split.side(), World.PROGRAM.userId(), split.sections(), World.PROGRAM)
                .episode()
                .id();
        Chart chart = world.records
                .charts()
                .open(episodeId, World.PROGRAM)
                .chartIfOpen()
                .orElseThrow();
        return CaseAssembly.of(chart, world.records.clinics().find(World.CLINIC).orElseThrow(), DAY);
    }
}
