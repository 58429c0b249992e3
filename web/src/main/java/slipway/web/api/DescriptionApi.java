package slipway.web.api;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** The description of this interface; it holds nothing of anybody, so that no token is needed. */
@RestController
class DescriptionApi {
    @GetMapping("/api/v1/openapi.yaml")
    ResponseEntity<byte[]> description() {
        try (InputStream stream = Objects.requireNonNull(DescriptionApi.class.getResourceAsStream("openapi.yaml"))) {
            return ResponseEntity.ok().contentType(Bodies.YAML).body(stream.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
