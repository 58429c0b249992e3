package slipway.web.security;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.session.config.annotation.web.http.EnableSpringHttpSession;
import org.springframework.session.web.http.CookieSerializer;
import org.springframework.session.web.http.DefaultCookieSerializer;
import slipway.web.WebOptions;

/** Sessions of staff in the records instead of in the memory of one server. */
@Configuration
@EnableSpringHttpSession
class SessionConfig {
    @Bean
    CookieSerializer sessionCookie(WebOptions options) {
        var cookie = new DefaultCookieSerializer();
        cookie.setCookieName("slipway");
        cookie.setSameSite("Strict");
        cookie.setUseHttpOnlyCookie(true);
        // Otherwise it follows from the request: a clinic's own machine may have no certificate.
        if (options.reachedOverTls()) {
            cookie.setUseSecureCookie(true);
        }
        cookie.setCookiePath("/");
        return cookie;
    }
}
