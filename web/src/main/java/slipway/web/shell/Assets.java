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
    /** Version of the program; {@code dev} where it was not packaged. */
    static final String PROGRAM = Optional.ofNullable(Assets.class.getPackage().getImplementationVersion())
            .orElse("dev");

    /** Part of every asset's address. */
    static final String VERSION = PROGRAM + "-" + Long.toString(System.currentTimeMillis() / 1000, Character.MAX_RADIX);

    private static final Duration KEPT = Duration.ofDays(30);

    @Override
    public void addResourceHandlers(ResourceHandlerRegistry registry) {
        CacheControl kept = CacheControl.maxAge(KEPT).cachePublic().immutable();
        registry.addResourceHandler("/assets/" + VERSION + "/**")
                .addResourceLocations(
                        "classpath:/slipway/web/assets/", "classpath:/META-INF/resources/webjars/htmx.org/2.0.10/dist/")
                .setCacheControl(kept);
    }
}
