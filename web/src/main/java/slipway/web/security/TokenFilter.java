package slipway.web.security;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;
import slipway.care.record.Records;
import slipway.care.record.access.ApiToken;
import slipway.care.record.access.StaffAccount;
import slipway.web.shell.ApiUser;
import slipway.web.shell.Problem;
import slipway.web.shell.Tokens;

/** Lets a program in by its token, in the name of the account that the token belongs to. Nothing is kept between requests. */
final class TokenFilter extends OncePerRequestFilter {
    private static final int TOO_MANY = 429;
    private static final Pattern BEARER = Pattern.compile("Bearer +(" + Tokens.FORM + ")", Pattern.CASE_INSENSITIVE);

    private final Records records;
    private final Clock clock;
    private final TokenRates rates = new TokenRates();

    TokenFilter(Records records, Clock clock) {
        this.records = records;
        this.clock = clock;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws IOException, ServletException {
        Instant now = clock.instant();
        Optional<ApiUser> user = user(request.getHeader(HttpHeaders.AUTHORIZATION), now);
        if (user.isPresent()) {
            Optional<Duration> wait = rates.take(user.get().token().id(), now);
            if (wait.isPresent()) {
                response.setHeader(
                        HttpHeaders.RETRY_AFTER, String.valueOf(wait.get().toSeconds()));
                new Problem(
                                TOO_MANY,
                                "a token may ask %d times at once and %d times a second in the long run; wait %d s"
                                        .formatted(
                                                TokenRates.AT_ONCE,
                                                TokenRates.PER_SECOND,
                                                wait.get().toSeconds()))
                        .write(response);
                return;
            }
            records.tokens().used(user.get().token(), now);
            letIn(user.get());
        }
        chain.doFilter(request, response);
    }

    private Optional<ApiUser> user(@Nullable String header, Instant now) {
        Matcher sent = BEARER.matcher(header == null ? "" : header);
        if (!sent.matches()) {
            return Optional.empty();
        }
        return records.tokens()
                .find(Tokens.digest(sent.group(1)))
                .filter(token -> token.isUsableAt(now))
                .flatMap(this::user);
    }

    /** An account that may not sign in any more takes its tokens along. */
    private Optional<ApiUser> user(ApiToken token) {
        return records.staff()
                .find(token.staffId())
                .filter(StaffAccount::active)
                .filter(account -> account.clinicId().equals(token.clinicId()))
                .map(account -> new ApiUser(SignIn.user(account), token));
    }

    private static void letIn(ApiUser user) {
        List<SimpleGrantedAuthority> granted = new ArrayList<>();
        user.token().scopes().forEach(scope -> granted.add(new SimpleGrantedAuthority(Route.SCOPE + scope.key())));
        user.staff().roles().forEach(role -> granted.add(new SimpleGrantedAuthority(role.name())));
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(user, null, granted));
        SecurityContextHolder.setContext(context);
    }
}
