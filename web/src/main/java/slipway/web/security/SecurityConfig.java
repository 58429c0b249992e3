package slipway.web.security;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpMethod;
import org.springframework.security.authentication.AuthenticationManager;
import org.springframework.security.authentication.ProviderNotFoundException;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.HeadersConfigurer.FrameOptionsConfig;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.access.intercept.AuthorizationFilter;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.servlet.util.matcher.PathPatternRequestMatcher;
import slipway.web.WebOptions;
import slipway.web.door.CodeRates;
import slipway.web.door.PatientCookie;
import slipway.web.door.PatientForms;

/** The rules of every request: the table of routes, the headers, the answers to whoever may not. */
@Configuration
class SecurityConfig {
    private static final Duration HTTPS_ONLY = Duration.ofDays(365);

    /** Nothing from elsewhere, nothing inline; pictures may be data because figures are embedded that way. */
    private static final String CONTENT_POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; "
            + "img-src 'self' data:; font-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; "
            + "media-src 'self'; form-action 'self'; frame-src 'self'; frame-ancestors 'self'; base-uri 'none'";

    /** The pages of the person at home: known by their cookie, without a session, so that none of staff is touched. */
    @Bean
    @Order(1)
    SecurityFilterChain patientRoutes(
            HttpSecurity http, PatientFilter known, PatientForms forms, PatientRefusals refusals, WebOptions options) {
        var paths = PathPatternRequestMatcher.withDefaults();
        http.securityMatchers(matchers -> matchers.requestMatchers(
                paths.matcher("/p"),
                paths.matcher("/p/**"),
                paths.matcher("/stop/**"),
                paths.matcher("/home"),
                paths.matcher("/home/**"),
                paths.matcher("/before"),
                paths.matcher("/before/**")));
        table(http);
        http.sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .requestCache(cache -> cache.disable())
                .addFilterBefore(known, AuthorizationFilter.class)
                // Opening a code is no use of a cookie: its form needs no proof, and its page checks where it comes
                // from. Reminders are stopped by the program of a mail server, which knows the token and nothing else.
                .csrf(csrf -> csrf.csrfTokenRepository(forms)
                        .ignoringRequestMatchers(
                                paths.matcher(HttpMethod.POST, "/p/{token}"),
                                paths.matcher(HttpMethod.POST, "/stop/{token}")))
                .exceptionHandling(
                        answers -> answers.authenticationEntryPoint(refusals).accessDeniedHandler(refusals));
        return finish(http, options);
    }

    @Bean
    PatientFilter patientFilter(PatientCookie cookie, CodeRates rates, Clock clock) {
        return new PatientFilter(cookie, rates, clock);
    }

    /** In the rules of the patient's pages only, not before every request. */
    @Bean
    FilterRegistrationBean<PatientFilter> patientFilterInItsPlace(PatientFilter filter) {
        var registration = new FilterRegistrationBean<>(filter);
        registration.setEnabled(false);
        return registration;
    }

    @Bean
    @Order(2)
    SecurityFilterChain routes(
            HttpSecurity http, SecurityContextRepository contexts, Refusals refusals, WebOptions options) {
        table(http);
        http.securityContext(context -> context.securityContextRepository(contexts));
        http.exceptionHandling(answers -> answers.authenticationEntryPoint(
                        (request, response, refused) -> response.sendRedirect("/sign-in"))
                .accessDeniedHandler(refusals));
        return finish(http, options);
    }

    private static void table(HttpSecurity http) {
        http.authorizeHttpRequests(rules -> {
            var paths = PathPatternRequestMatcher.withDefaults();
            for (Route route :
                    Routes.list().stream().filter(each -> !each.isForPrograms()).toList()) {
                var rule = rules.requestMatchers(paths.matcher(HttpMethod.valueOf(route.method()), route.pattern()));
                if (route.who().contains("public")) {
                    rule.permitAll();
                } else {
                    rule.hasAnyAuthority(authorities(route.who()));
                }
            }
            rules.anyRequest().denyAll();
        });
    }

    private static SecurityFilterChain finish(HttpSecurity http, WebOptions options) {
        http.formLogin(form -> form.disable())
                .httpBasic(basic -> basic.disable())
                .logout(logout -> logout.disable())
                .anonymous(anonymous -> anonymous.authorities("NOBODY").principal("nobody"));
        http.headers(headers -> headers.contentSecurityPolicy(policy -> policy.policyDirectives(CONTENT_POLICY))
                .referrerPolicy(policy -> policy.policy(ReferrerPolicy.NO_REFERRER))
                .permissionsPolicyHeader(policy -> policy.policy(
                        "camera=(), microphone=(), geolocation=(), payment=(), usb=(), interest-cohort=()"))
                .frameOptions(FrameOptionsConfig::sameOrigin)
                .httpStrictTransportSecurity(strict -> strict.includeSubDomains(false)
                        .maxAgeInSeconds(HTTPS_ONLY.toSeconds())
                        .requestMatcher(request -> options.reachedOverTls() || request.isSecure())));
        return http.build();
    }

    private static String[] authorities(Set<String> who) {
        return who.stream()
                .flatMap(word -> word.equals("signed-in")
                        ? List.of(Authorities.STAFF, Authorities.PENDING).stream()
                        : List.of(word).stream())
                .toArray(String[]::new);
    }

    @Bean
    SecurityContextRepository securityContexts() {
        return new HttpSessionSecurityContextRepository();
    }

    @Bean
    PasswordEncoder passwords() {
        return PasswordHashes.onThisMachine();
    }

    /** Nobody signs in through the framework: {@link SignInController} does it, so that both factors are in one place. */
    @Bean
    AuthenticationManager noAuthenticationManager() {
        return attempt -> {
            throw new ProviderNotFoundException("sign-in goes through its page");
        };
    }
}
