package slipway.web.api;

import jakarta.servlet.http.HttpServletRequest;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import slipway.care.record.NotThere;
import slipway.exercises.yaml.MistakesException;
import slipway.web.shell.Faults;
import slipway.web.shell.Problem;

/** What went wrong, as a problem. A fault of the program is told with a reference into its log, never with its message. */
@RestControllerAdvice(basePackageClasses = ApiFaults.class)
@Order(Ordered.HIGHEST_PRECEDENCE)
class ApiFaults {
    private static final Logger LOG = LoggerFactory.getLogger(ApiFaults.class);

    @ExceptionHandler
    ResponseEntity<byte[]> known(ProblemException refused) {
        return answer(refused.problem());
    }

    @ExceptionHandler
    ResponseEntity<byte[]> notThere(NotThere absent) {
        return answer(new Problem(HttpStatus.NOT_FOUND.value(), String.valueOf(absent.getMessage())));
    }

    @ExceptionHandler
    ResponseEntity<byte[]> mistakes(MistakesException wrong) {
        return answer(new Problem(
                HttpStatus.UNPROCESSABLE_CONTENT.value(),
                "what was sent has mistakes; nothing was changed",
                wrong.mistakes()));
    }

    @ExceptionHandler
    ResponseEntity<byte[]> fault(RuntimeException fault, HttpServletRequest request) {
        String reference = UUID.randomUUID().toString().substring(0, 8);
        LOG.error("fault {} at {}: {}", reference, request.getMethod(), Faults.describe(fault));
        return answer(new Problem(
                HttpStatus.INTERNAL_SERVER_ERROR.value(), "the program failed; its log has it under " + reference));
    }

    private static ResponseEntity<byte[]> answer(Problem problem) {
        return ResponseEntity.status(problem.status())
                .contentType(MediaType.parseMediaType(Problem.MEDIA_TYPE))
                .body(problem.json());
    }
}
