package slipway.web.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.http.HttpHeaders;
import org.springframework.http.server.PathContainer;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.AuthenticationEntryPoint;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.web.util.pattern.PathPatternParser;
import slipway.web.shell.Problem;

/** The answer to a program that may not, in words that a program can read. */
final class ApiRefusals implements AuthenticationEntryPoint, AccessDeniedHandler {
    private final List<Route> routes;

    ApiRefusals(List<Route> routes) {
        this.routes = List.copyOf(routes);
    }

    @Override
    public void commence(HttpServletRequest request, HttpServletResponse response, AuthenticationException refused)
            throws IOException {
        response.setHeader(HttpHeaders.WWW_AUTHENTICATE, "Bearer realm=\"slipway\"");
        new Problem(
                        HttpServletResponse.SC_UNAUTHORIZED,
                        "send a token that is valid now: Authorization: Bearer slipway_...")
                .write(response);
    }

    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException refused)
            throws IOException {
        List<Route> here = routes.stream()
                .filter(route -> matches(route, request.getRequestURI()))
                .toList();
        Optional<Route> meant = here.stream()
                .filter(route -> route.method().equals(request.getMethod()))
                .findFirst();
        if (meant.isPresent()) {
            new Problem(HttpServletResponse.SC_FORBIDDEN, needed(meant.get())).write(response);
        } else if (here.isEmpty()) {
            new Problem(HttpServletResponse.SC_NOT_FOUND, "there is no such address; see /api/v1/openapi.yaml")
                    .write(response);
        } else {
            String methods = here.stream().map(Route::method).sorted().collect(Collectors.joining(", "));
            response.setHeader(HttpHeaders.ALLOW, methods);
            new Problem(HttpServletResponse.SC_METHOD_NOT_ALLOWED, "this address takes " + methods).write(response);
        }
    }

    private static boolean matches(Route route, String path) {
        return PathPatternParser.defaultInstance.parse(route.pattern()).matches(PathContainer.parsePath(path));
    }

    private static String needed(Route route) {
        return "the token must have the scope %s and its account one of the roles %s"
                .formatted(
                        route.scope().orElse("").replace(Route.SCOPE, ""),
                        String.join(", ", route.roles()).toLowerCase(java.util.Locale.ROOT));
    }
}
