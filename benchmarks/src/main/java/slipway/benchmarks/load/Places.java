package slipway.benchmarks.load;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.springframework.util.FileSystemUtils;
import slipway.store.StoreSettings;

/** A fresh database of either kind that writes to the disk as one in use would. */
public record Places(StoreSettings settings, Path folder, Runnable end) implements AutoCloseable {
    public static Places of(String kind) throws IOException {
        Path folder = Files.createTempDirectory(Path.of(System.getProperty("bench.folder", "/tmp")), "slipway-load");
        if (kind.equals("sqlite")) {
            return new Places(StoreSettings.inFolder(folder), folder, () -> {});
        }
        EmbeddedPostgres server = EmbeddedPostgres.builder()
                .setOverrideWorkingDirectory(folder.toFile())
                .setServerConfig("fsync", "on")
                .setServerConfig("full_page_writes", "on")
                .setServerConfig("synchronous_commit", "on")
                .start();
        String url = server.getJdbcUrl("postgres", "postgres").split("\\?", 2)[0];
        return new Places(StoreSettings.postgres(url, "postgres", "postgres"), folder, () -> close(server));
    }

    private static void close(EmbeddedPostgres server) {
        try {
            server.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        end.run();
        try {
            FileSystemUtils.deleteRecursively(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
