package slipway.web.shell;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;
import slipway.store.db.StoreFailure;

/**
 * One plain page while the database cannot work. It stands outside of everything else, since already the session, and
 * with it every other page, is in the database.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
class DatabaseAway extends OncePerRequestFilter {
    private static final Logger LOG = LoggerFactory.getLogger(DatabaseAway.class);
    private static final String AGAIN_SECONDS = "30";

    private final byte[] page = page();

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        try {
            chain.doFilter(request, response);
        } catch (ServletException | RuntimeException e) {
            Optional<StoreFailure> away = away(e);
            if (away.isEmpty() || response.isCommitted()) {
                throw e;
            }
            LOG.error(
                    "the database is away at {}: {}",
                    request.getMethod(),
                    away.get().getMessage());
            answer(response);
        }
    }

    private static Optional<StoreFailure> away(Throwable fault) {
        for (@Nullable Throwable at = fault; at != null; at = at.getCause()) {
            if (at instanceof StoreFailure failure && failure.isAway()) {
                return Optional.of(failure);
            }
        }
        return Optional.empty();
    }

    private void answer(HttpServletResponse response) throws IOException {
        response.reset();
        response.setStatus(HttpServletResponse.SC_SERVICE_UNAVAILABLE);
        response.setHeader("Retry-After", AGAIN_SECONDS);
        response.setHeader("Cache-Control", "no-store");
        response.setHeader("Content-Security-Policy", "default-src 'none'; style-src 'self'; form-action 'none'");
        response.setHeader("X-Content-Type-Options", "nosniff");
        response.setContentType("text/html;charset=UTF-8");
        response.getOutputStream().write(page);
    }

    private static byte[] page() {
        try (InputStream file = Objects.requireNonNull(DatabaseAway.class.getResourceAsStream("away.html"))) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .replace("VERSION", Assets.VERSION)
                    .getBytes(StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
