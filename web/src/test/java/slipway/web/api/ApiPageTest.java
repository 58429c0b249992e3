package slipway.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipway.care.record.access.ApiScope;

/** The commands of docs/api.md, run as they stand there. */
class ApiPageTest {
    private static final Pattern BLOCK = Pattern.compile("```sh\\n(.*?)```", Pattern.DOTALL);

    @Test
    void everyCommandOfThePageWorks(@TempDir Path folder) throws IOException, InterruptedException {
        String page = Files.readString(ApiCaller.projectFile("docs/api.md"));
        String script = "set -eu -o pipefail\n"
                + BLOCK.matcher(page).results().map(block -> block.group(1)).collect(Collectors.joining("\n"));
        assertThat(script).contains("/fhir").contains("--data-binary @case.yaml");
        Files.createDirectory(folder.resolve("examples"));
        Files.writeString(
                folder.resolve("examples/low-irritability-stiff.yaml"), ApiCaller.example("low-irritability-stiff"));
        ApiCaller caller = ApiCaller.of("therapist", ApiScope.values());
        var process = new ProcessBuilder("bash", "-c", script)
                .directory(folder.toFile())
                .redirectErrorStream(true);
        process.environment().put("SLIPWAY", ApiCaller.server().address());
        process.environment().put("TOKEN", caller.token());
        process.environment().put("AT_HOME", atHome(caller));
        Path log = folder.resolve("log");
        Process running = process.redirectOutput(log.toFile()).start();
        assertThat(running.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(running.exitValue()).as(Files.readString(log)).isZero();
        assertThat(Files.readString(folder.resolve("case.yaml"))).contains("onsetDeg: 60");
        assertThat(Files.readString(folder.resolve("episode.json"))).contains("\"Bundle\"");
        assertThat(Files.readAllBytes(folder.resolve("sheet.pdf"))).startsWith('%', 'P', 'D', 'F');
    }

    private static int reports(String episode) {
        return ApiCaller.records()
                .charts()
                .open(episode, ApiCaller.program())
                .chartIfOpen()
                .orElseThrow()
                .checkIns()
                .list()
                .size();
    }

    private static String atHome(ApiCaller caller) {
        return ApiCaller.json(caller.get("/api/v1/cases?limit=100"))
                .path("cases")
                .valueStream()
                .map(each -> each.path("episode").asString())
                .filter(id ->
                        caller.get("/api/v1/cases/" + id + "/plans/released").statusCode() == 200)
                // Another test reports on whoever has not reported yet.
                .max(Comparator.comparingInt(ApiPageTest::reports))
                .orElseThrow();
    }
}
