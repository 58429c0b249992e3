package slipway.web.security;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.session.config.annotation.web.http.EnableSpringHttpSession;
import org.springframework.session.web.http.CookieSerializer;
import org.springframework.session.web.http.DefaultCookieSerializer;

/** Sessions of staff in the records instead of in the memory of one server. */
@Configuration
@EnableSpringHttpSession
class SessionConfig {
    @Bean
    CookieSerializer sessionCookie() {
        var cookie = new DefaultCookieSerializer();
        cookie.setCookieName("slipway");
        cookie.setSameSite("Strict");
        cookie.setUseHttpOnlyCookie(true);
        // Whether it is marked as secure follows from the request: a clinic's own machine may have no certificate.
        cookie.setCookiePath("/");
        return cookie;
    }
}
