package slipway.web.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.security.web.csrf.CsrfException;
import org.springframework.stereotype.Component;

/** The answer to whoever may not: a plain status, with the page of that status. */
@Component
class Refusals implements AccessDeniedHandler {
    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException refused)
            throws IOException {
        // A form whose token is gone was most likely open while its session ended: signing in again mends it.
        if (refused instanceof CsrfException && request.getSession(false) == null) {
            response.sendRedirect("/sign-in?ended");
            return;
        }
        response.sendError(HttpServletResponse.SC_FORBIDDEN);
    }
}
