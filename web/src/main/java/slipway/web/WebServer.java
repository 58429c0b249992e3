package slipway.web;

import java.time.Clock;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import org.springframework.boot.Banner;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.event.ContextClosedEvent;
import slipway.store.Store;

/** The running server. */
public final class WebServer implements AutoCloseable {
    private final ConfigurableApplicationContext context;
    private final CountDownLatch ended = new CountDownLatch(1);

    private WebServer(ConfigurableApplicationContext context) {
        this.context = context;
        context.addApplicationListener(event -> {
            if (event instanceof ContextClosedEvent) {
                ended.countDown();
            }
        });
    }

    /**
     * Starts the server; it runs until it is closed.
     *
     * @param store the open records; they stay open when the server ends
     * @param clock tells the time of everything that is written
     * @param furtherSettings of the container, for tests and proxies
     * @throws IllegalStateException if the port is taken or the records cannot be opened
     */
    public static WebServer start(WebOptions options, Store store, Clock clock, Map<String, Object> furtherSettings) {
        var settings = new HashMap<String, Object>(furtherSettings);
        // Whoever sends nothing for so long, or keeps a connection without asking, makes room for others.
        settings.putIfAbsent("server.tomcat.connection-timeout", "20s");
        settings.putIfAbsent("server.tomcat.keep-alive-timeout", "30s");
        settings.put("server.port", options.port());
        settings.put("server.address", options.address());
        var application = new SpringApplication(WebApplication.class);
        application.setBannerMode(Banner.Mode.OFF);
        application.setRegisterShutdownHook(true);
        application.setDefaultProperties(settings);
        application.addInitializers(context -> {
            var beans = context.getBeanFactory();
            beans.registerSingleton("webOptions", options);
            beans.registerSingleton("records", store.records());
            beans.registerSingleton("sessionStore", store.sessions());
            beans.registerSingleton("serverKeys", store.keys());
            beans.registerSingleton("sharedWork", store.work());
            beans.registerSingleton("backups", store.backups());
            beans.registerSingleton("clock", clock);
        });
        return new WebServer(application.run());
    }

    /** The port that it listens on. */
    public int port() {
        if (context instanceof WebServerApplicationContext web && web.getWebServer() != null) {
            return web.getWebServer().getPort();
        }
        throw new IllegalStateException("the server is not running");
    }

    /** The part of the running program that has a type, for tests. */
    public <T> T part(Class<T> type) {
        return context.getBean(type);
    }

    /** Waits until the server is closed, by this program or by a signal. */
    public void await() throws InterruptedException {
        ended.await();
    }

    @Override
    public void close() {
        context.close();
    }
}
