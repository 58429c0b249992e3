package slipway.web.api;

import java.util.List;
import org.springframework.http.HttpStatus;
import slipway.exercises.yaml.Mistake;
import slipway.web.shell.Problem;

/** Ends a request with a problem. */
final class ProblemException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    ProblemException(HttpStatus status, String detail, List<Mistake> mistakes) {
        super(detail);
        this.problem = new Problem(status.value(), detail, mistakes);
    }

    ProblemException(HttpStatus status, String detail) {
        this(status, detail, List.of());
    }

    Problem problem() {
        return problem;
    }
}
