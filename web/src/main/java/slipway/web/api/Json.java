package slipway.web.api;

import java.nio.charset.StandardCharsets;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import tools.jackson.databind.node.ObjectNode;

/** Answers in JSON. They name their type themselves, so that no other is ever looked for. */
final class Json {
    private Json() {}

    static ResponseEntity<byte[]> ok(ObjectNode body) {
        return bytes(ResponseEntity.ok(), body.toString());
    }

    static ResponseEntity<byte[]> ok(String body) {
        return bytes(ResponseEntity.ok(), body);
    }

    static ResponseEntity<byte[]> made(boolean now, String location, ObjectNode body) {
        return bytes(
                ResponseEntity.status(now ? HttpStatus.CREATED : HttpStatus.OK).location(java.net.URI.create(location)),
                body.toString());
    }

    static ResponseEntity<byte[]> versioned(String tag, ObjectNode body) {
        return bytes(ResponseEntity.ok().eTag(tag), body.toString());
    }

    static ResponseEntity<byte[]> unchanged(String tag) {
        return ResponseEntity.status(HttpStatus.NOT_MODIFIED).eTag(tag).build();
    }

    private static ResponseEntity<byte[]> bytes(ResponseEntity.BodyBuilder answer, String body) {
        return answer.contentType(MediaType.APPLICATION_JSON).body(body.getBytes(StandardCharsets.UTF_8));
    }
}
