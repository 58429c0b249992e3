package slipway.web.shell;

import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.http.CacheControl;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.springframework.web.servlet.resource.PathResourceResolver;

/** Style, scripts and pictures of the pages, and the libraries that they use. */
@Configuration
class Assets implements WebMvcConfigurer {
    private static final String FOLDER = "classpath:/slipway/web/assets/";

    /** Version of the program; {@code dev} where it was not packaged. */
    static final String PROGRAM = Optional.ofNullable(Assets.class.getPackage().getImplementationVersion())
            .orElse("dev");

    /** Part of every asset's address: the same on all servers with the same files, another when a file changes. */
    static final String VERSION = PROGRAM + "-" + digest();

    private static final Duration KEPT = Duration.ofDays(30);

    @Override
    public void addResourceHandlers(ResourceHandlerRegistry registry) {
        CacheControl kept = CacheControl.maxAge(KEPT).cachePublic().immutable();
        registry.addResourceHandler("/assets/**")
                .addResourceLocations(FOLDER, "classpath:/META-INF/resources/webjars/htmx.org/2.0.10/dist/")
                .setCacheControl(kept)
                .resourceChain(true)
                .addResolver(new AnyVersion());
    }

    /** While servers are changed in turn, a page of one may ask another for its files: any version gets what is there. */
    private static final class AnyVersion extends PathResourceResolver {
        @Override
        protected @Nullable Resource getResource(String path, Resource location) throws IOException {
            return super.getResource(path.substring(path.indexOf('/') + 1), location);
        }
    }

    private static String digest() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            Resource[] files = new PathMatchingResourcePatternResolver().getResources(FOLDER + "**");
            // Folders, in the order of the names, have nothing to read.
            Arrays.sort(files, Comparator.comparing(file -> String.valueOf(file.getFilename())));
            for (Resource file : files) {
                if (file.isReadable()) {
                    digest.update(file.getContentAsByteArray());
                }
            }
            return HexFormat.of().formatHex(digest.digest(), 0, 6);
        } catch (IOException | NoSuchAlgorithmException e) {
            throw new IllegalStateException("the files of the pages cannot be read", e);
        }
    }
}
