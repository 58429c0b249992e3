package slipway.web.shell;

import java.time.Duration;
import java.util.Optional;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.CacheControl;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Style, scripts and pictures of the pages, and the libraries that they use. */
@Configuration
class Assets implements WebMvcConfigurer {
    /** Part of every asset's address. */
    static final String VERSION = Optional.ofNullable(Assets.class.getPackage().getImplementationVersion())
            .map(version -> version + "-" + Long.toString(Started.AT, Character.MAX_RADIX))
            .orElse("dev");

    private static final Duration KEPT = Duration.ofDays(30);

    @Override
    public void addResourceHandlers(ResourceHandlerRegistry registry) {
        CacheControl kept = VERSION.equals("dev")
                ? CacheControl.noCache()
                : CacheControl.maxAge(KEPT).cachePublic().immutable();
        registry.addResourceHandler("/assets/" + VERSION + "/**")
                .addResourceLocations(
                        "classpath:/slipway/web/assets/", "classpath:/META-INF/resources/webjars/htmx.org/2.0.10/dist/")
                .setCacheControl(kept);
    }

    private static final class Started {
        private static final long AT = System.currentTimeMillis() / 1000;
    }
}
