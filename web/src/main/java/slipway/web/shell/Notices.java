package slipway.web.shell;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A sentence kept from one request to the next page: what just happened. */
public final class Notices {
    private static final String KEY = "notice";

    private Notices() {}

    /** Keeps a sentence for the next page. */
    public static void put(HttpServletRequest request, String sentence) {
        request.getSession().setAttribute(KEY, sentence);
    }

    static Optional<String> take(HttpServletRequest request) {
        @Nullable HttpSession session = request.getSession(false);
        if (session == null || !(session.getAttribute(KEY) instanceof String sentence)) {
            return Optional.empty();
        }
        session.removeAttribute(KEY);
        return Optional.of(sentence);
    }
}
