package slipway.web.security;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;

/** The table of routes: every address of the program and who may use it. */
final class Routes {
    private Routes() {}

    /** All lines, in the order of the table. */
    static List<Route> list() {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (InputStream stream = Routes.class.getResourceAsStream("routes.csv");
                var reader = new InputStreamReader(Objects.requireNonNull(stream), StandardCharsets.UTF_8);
                var lines = format.parse(reader)) {
            return lines.stream()
                    .map(line -> new Route(
                            line.get("method"),
                            line.get("pattern"),
                            Set.of(line.get("who").split(" "))))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read routes.csv", e);
        }
    }
}
