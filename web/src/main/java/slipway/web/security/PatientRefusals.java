package slipway.web.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.stereotype.Component;

/** The answer to whoever comes without a code that holds: a page with the emergency number; to a script a status. */
@Component
class PatientRefusals implements AccessDeniedHandler, AuthenticationEntryPoint {
    private static final String SCRIPT = "X-Requested-With";

    @Override
    public void commence(HttpServletRequest request, HttpServletResponse response, AuthenticationException refused)
            throws IOException {
        answer(request, response, HttpServletResponse.SC_UNAUTHORIZED);
    }

    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException refused)
            throws IOException {
        answer(request, response, HttpServletResponse.SC_FORBIDDEN);
    }

    private static void answer(HttpServletRequest request, HttpServletResponse response, int status)
            throws IOException {
        if (request.getHeader(SCRIPT) != null) {
            response.setStatus(status);
        } else {
            // Whoever came by a code has no password to sign in with.
            response.sendRedirect("/p");
        }
    }
}
