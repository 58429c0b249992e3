package slipway.web.shell;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.springframework.http.HttpStatus;
import slipway.exercises.yaml.Mistake;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What went wrong, for another program: problem details (RFC 9457, 2023) with all mistakes of what was sent.
 *
 * @param status of HTTP
 * @param detail one sentence; holds nothing of a person
 * @param mistakes each with line and column, where there is a text, and its path
 */
public record Problem(int status, String detail, List<Mistake> mistakes) {
    /** The media type of {@link #json()}. */
    public static final String MEDIA_TYPE = "application/problem+json";

    public Problem {
        mistakes = List.copyOf(mistakes);
    }

    /** Without mistakes of what was sent. */
    public Problem(int status, String detail) {
        this(status, detail, List.of());
    }

    /** The body of the answer. */
    public byte[] json() {
        ObjectNode root = JsonMapper.shared().createObjectNode();
        root.put("type", "about:blank")
                .put("title", HttpStatus.valueOf(status).getReasonPhrase())
                .put("status", status)
                .put("detail", detail);
        if (!mistakes.isEmpty()) {
            ArrayNode list = root.putArray("mistakes");
            mistakes.forEach(mistake -> add(list.addObject(), mistake));
        }
        return root.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void add(ObjectNode node, Mistake mistake) {
        if (mistake.line() > 0) {
            node.put("line", mistake.line()).put("column", mistake.column());
        }
        node.put("path", mistake.path()).put("message", mistake.message());
    }

    /** Answers with it. */
    public void write(HttpServletResponse response) throws IOException {
        byte[] body = json();
        response.setStatus(status);
        response.setContentType(MEDIA_TYPE);
        response.setContentLength(body.length);
        response.getOutputStream().write(body);
    }
}
