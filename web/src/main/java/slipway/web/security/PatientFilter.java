package slipway.web.security;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;
import slipway.web.door.PatientCookie;
import slipway.web.door.PatientUser;

/** Knows a person at home by the cookie, for this one request; no session is made or touched. */
final class PatientFilter extends OncePerRequestFilter {
    private final PatientCookie cookie;

    PatientFilter(PatientCookie cookie) {
        this.cookie = cookie;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        cookie.read(request).ifPresent(PatientFilter::enter);
        chain.doFilter(request, response);
    }

    private static void enter(PatientUser user) {
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(
                user, null, List.of(new SimpleGrantedAuthority(Authorities.PATIENT))));
        SecurityContextHolder.setContext(context);
    }
}
