package slipway.web.security;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;
import slipway.web.door.CodeRates;
import slipway.web.door.PatientCookie;
import slipway.web.door.PatientUser;

/** Knows a person at home by the cookie, for this one request; no session is made or touched. Slows a flood down. */
final class PatientFilter extends OncePerRequestFilter {
    private final PatientCookie cookie;
    private final CodeRates rates;
    private final Clock clock;

    PatientFilter(PatientCookie cookie, CodeRates rates, Clock clock) {
        this.cookie = cookie;
        this.rates = rates;
        this.clock = clock;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        Optional<PatientUser> user = cookie.read(request);
        user.ifPresent(PatientFilter::enter);
        Optional<Duration> pause = user.flatMap(known -> rates.take(known.linkId(), clock.instant()));
        pause.ifPresent(wait -> slow(wait, request, response));
        // A report is answered in any case, because it may tell of danger.
        if (pause.isPresent() && request.getMethod().equals("GET")) {
            request.getRequestDispatcher("/p").forward(request, response);
        } else {
            chain.doFilter(request, response);
        }
    }

    private static void slow(Duration wait, HttpServletRequest request, HttpServletResponse response) {
        response.setStatus(HttpStatus.TOO_MANY_REQUESTS.value());
        response.setHeader(HttpHeaders.RETRY_AFTER, String.valueOf(wait.toSeconds()));
        request.setAttribute(CodeRates.class.getName(), wait.toSeconds());
    }

    private static void enter(PatientUser user) {
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(
                user, null, List.of(new SimpleGrantedAuthority(Authorities.PATIENT))));
        SecurityContextHolder.setContext(context);
    }
}
