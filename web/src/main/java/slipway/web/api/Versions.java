package slipway.web.api;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;

/** Versions in the heads of requests and answers (RFC 9110, 2022, section 13). */
final class Versions {
    private Versions() {}

    /** A version as a head shows it. */
    static String tag(String version) {
        return '"' + version + '"';
    }

    /** Whether the program has this version already. */
    static boolean isKnown(HttpServletRequest request, String tag) {
        return Optional.ofNullable(request.getHeader(HttpHeaders.IF_NONE_MATCH))
                .filter(known -> Arrays.asList(known.split("\\s*,\\s*", -1)).contains(tag))
                .isPresent();
    }

    /**
     * Demands that a change was made on the version that stands now.
     *
     * @param version without the form that it was read in
     * @throws ProblemException 428 if the request names none, 412 if it names another
     */
    static void demand(HttpServletRequest request, String version) {
        String named = Optional.ofNullable(request.getHeader(HttpHeaders.IF_MATCH))
                .orElseThrow(() -> new ProblemException(
                        HttpStatus.PRECONDITION_REQUIRED,
                        "name the version that was read: If-Match, with the ETag of the last answer"));
        if (!named.equals(tag(version + "-yaml")) && !named.equals(tag(version + "-json"))) {
            throw stale();
        }
    }

    static ProblemException stale() {
        return new ProblemException(
                HttpStatus.PRECONDITION_FAILED,
                "it has changed since it was read; nothing was changed now. Read it again and apply the change to that");
    }
}
