package slipway.web.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.ApiScope;
import slipway.care.record.access.ApiToken;
import slipway.care.record.access.Reach;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;
import slipway.web.shell.Tokens;

/** Every route and every role. A handler that the table does not list fails here, and so does a line without a handler. */
class AuthorisationMatrixTest {
    private static final String PASSWORD = "a long sentence for tests";
    private static final String PATIENT = "patient";

    private static final TestServer SERVER = TestServer.shared();

    @BeforeAll
    static void start() {
        String hash = Objects.requireNonNull(
                SERVER.server().part(PasswordEncoder.class).encode(PASSWORD));
        String clinicId = SERVER.records().clinics().list().get(0).id();
        var act = new Act("test", Role.PROGRAM, clinicId, Instant.now());
        for (Role role : Role.values()) {
            if (role.isStaff()) {
                SERVER.records()
                        .staff()
                        .add(
                                "m-" + role.name().toLowerCase(java.util.Locale.ROOT),
                                "M",
                                EnumSet.of(role),
                                Reach.CLINIC,
                                hash,
                                act);
            }
        }
    }

    @Test
    // Files are served by the container, not by a handler: AssetsTest is about them.
    void handlersAndTableAreTheSame() {
        Set<String> handled =
                SERVER.server().part(RequestMappingHandlerMapping.class).getHandlerMethods().keySet().stream()
                        .filter(info -> !info.getPatternValues().contains("/error"))
                        .flatMap(info -> info.getPatternValues().stream()
                                .flatMap(pattern -> info.getMethodsCondition().getMethods().stream()
                                        .map(RequestMethod::name)
                                        .map(method -> method + " " + pattern)))
                        .collect(Collectors.toCollection(TreeSet::new));
        Set<String> listed = Routes.list().stream()
                .filter(route -> !Set.of("/error", "/assets/**").contains(route.pattern()))
                .map(route -> route.method() + " " + route.pattern())
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(handled).isEqualTo(listed);
    }

    @Test
    void everyRouteAnswersEachRoleAsTheTableSays() {
        Map<String, Visitor> visitors = new LinkedHashMap<>();
        for (Role role : Role.values()) {
            if (role.isStaff()) {
                visitors.put(
                        role.name(),
                        SERVER.visitor().signIn("m-" + role.name().toLowerCase(java.util.Locale.ROOT), PASSWORD));
            }
        }
        Visitor nobody = SERVER.visitor();
        nobody.get("/sign-in");
        visitors.put("nobody", nobody);
        for (Route route : Routes.list()) {
            // Signing out would end the test's own sessions, and the container's error page is no address of its own.
            if (route.pattern().equals("/sign-out") || route.pattern().equals("/error")) {
                continue;
            }
            visitors.forEach((who, visitor) -> check(route, who, visitor));
        }
    }

    @Test
    void everyAddressForProgramsAsksForItsScopeAndItsRoles() {
        List<Route> routes = Routes.list().stream()
                .filter(route -> route.isForPrograms() && route.scope().isPresent())
                .toList();
        for (Role role : Role.values()) {
            for (ApiScope scope : role.isStaff() ? ApiScope.values() : new ApiScope[0]) {
                String token = token(role, scope);
                for (Route route : routes) {
                    boolean allowed = route.scope().equals(Optional.of("scope:" + scope.key()))
                            && List.of(route.roles()).contains(role.name());
                    int status = asProgram(route, token);
                    String what = route + " as " + role + " with " + scope + " gave " + status;
                    if (allowed) {
                        assertThat(status).as(what).isNotIn(401, 403).isLessThan(500);
                    } else {
                        assertThat(status).as(what).isEqualTo(403);
                    }
                }
            }
        }
    }

    private static String token(Role role, ApiScope scope) {
        var account = SERVER.records()
                .staff()
                .credentials("m-" + role.name().toLowerCase(java.util.Locale.ROOT))
                .orElseThrow()
                .account();
        String token = Tokens.make();
        var act = new Act("test", Role.PROGRAM, account.clinicId(), Instant.now());
        SERVER.records()
                .tokens()
                .add(
                        new ApiToken(
                                Tokens.id(token),
                                act.clinicId(),
                                account.id(),
                                role + " " + scope,
                                Set.of(scope),
                                act.at(),
                                "test",
                                act.at().plusSeconds(3600),
                                Optional.empty(),
                                Optional.empty()),
                        Tokens.digest(token),
                        act);
        return token;
    }

    private static int asProgram(Route route, String token) {
        String path = route.pattern().replaceAll("\\{[^}]+}", "none");
        return SERVER.visitor()
                .send(HttpRequest.newBuilder(URI.create(SERVER.address() + path))
                        .header("Authorization", "Bearer " + token)
                        .method(route.method(), HttpRequest.BodyPublishers.noBody()))
                .statusCode();
    }

    private static void check(Route route, String who, Visitor visitor) {
        String path = route.pattern().replaceAll("\\{[^}]+}", "none").replace("/**", "/none");
        HttpResponse<String> answer = route.method().equals("GET") ? visitor.get(path) : visitor.post(path);
        String what = route + " as " + who + " gave " + answer.statusCode() + " " + TestServer.location(answer);
        if (route.isForPrograms() && route.scope().isPresent()) {
            // The session of a browser opens nothing that is for programs.
            assertThat(answer.statusCode()).as(what).isEqualTo(401);
        } else if (allowed(route, who)) {
            assertThat(answer.statusCode()).as(what).isNotEqualTo(403).isLessThan(500);
            if (!who.equals("nobody") && !route.who().contains("public")) {
                assertThat(TestServer.location(answer)).as(what).doesNotContain("sign-in");
            }
        } else if (who.equals("nobody") && !route.who().contains(PATIENT)) {
            assertThat(TestServer.location(answer)).as(what).contains("/sign-in");
        } else {
            assertThat(answer.statusCode()).as(what).isIn(302, 303, 401, 403, 404);
        }
    }

    private static boolean allowed(Route route, String who) {
        if (route.who().contains("public")) {
            return true;
        }
        return !who.equals("nobody")
                && (route.who().contains("staff")
                        || route.who().contains("signed-in")
                        || route.who().contains(who));
    }

    @Test
    void anUnlistedAddressIsDenied() {
        assertThat(SERVER.signedIn("lead").get("/actuator/env").statusCode()).isEqualTo(403);
        assertThat(TestServer.location(SERVER.visitor().get("/h2-console"))).contains("/sign-in");
    }
}
