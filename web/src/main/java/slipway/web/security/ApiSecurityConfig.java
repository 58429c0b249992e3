package slipway.web.security;

import java.time.Clock;
import java.util.List;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpMethod;
import org.springframework.security.authorization.AuthorityAuthorizationManager;
import org.springframework.security.authorization.AuthorizationManagers;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.AnonymousAuthenticationFilter;
import org.springframework.security.web.context.NullSecurityContextRepository;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import slipway.care.record.Records;

/**
 * The rules of requests of other programs: a token with each request, and nothing else. A cookie of a browser opens
 * nothing here, so that no page elsewhere can use somebody's session, and no proof of origin is needed.
 */
@Configuration
class ApiSecurityConfig {
    @Bean
    @Order(Ordered.HIGHEST_PRECEDENCE)
    SecurityFilterChain programs(HttpSecurity http, Records records, Clock clock) {
        List<Route> routes = Routes.list().stream().filter(Route::isForPrograms).toList();
        var paths = PathPatternRequestMatcher.withDefaults();
        var refusals = new ApiRefusals(routes);
        http.securityMatcher(paths.matcher("/api/**"));
        http.authorizeHttpRequests(rules -> {
            for (Route route : routes) {
                var rule = rules.requestMatchers(paths.matcher(HttpMethod.valueOf(route.method()), route.pattern()));
                if (route.scope().isEmpty()) {
                    rule.permitAll();
                } else {
                    rule.access(AuthorizationManagers.allOf(
                            AuthorityAuthorizationManager.hasAuthority(
                                    route.scope().get()),
                            AuthorityAuthorizationManager.hasAnyAuthority(route.roles())));
                }
            }
            rules.anyRequest().denyAll();
        });
        http.csrf(csrf -> csrf.disable())
                .formLogin(form -> form.disable())
                .httpBasic(basic -> basic.disable())
                .logout(logout -> logout.disable())
                .requestCache(cache -> cache.disable())
                .anonymous(anonymous -> anonymous.authorities("NOBODY").principal("nobody"))
                .sessionManagement(sessions -> sessions.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .securityContext(context -> context.securityContextRepository(new NullSecurityContextRepository()))
                .exceptionHandling(
                        answers -> answers.authenticationEntryPoint(refusals).accessDeniedHandler(refusals))
                .headers(headers -> headers.contentSecurityPolicy(
                        policy -> policy.policyDirectives("default-src 'none'; frame-ancestors 'none'")))
                .addFilterBefore(new TokenFilter(records, clock), AnonymousAuthenticationFilter.class);
        return http.build();
    }
}
