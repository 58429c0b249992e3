package slipway.web.shell;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import slipway.web.TestServer;
import slipway.web.TestServer.Visitor;

/** What goes wrong with names and findings in it leaves neither in the log. */
class LogPrivacyTest {
    private static final TestServer SERVER = TestServer.shared();

    @Test
    void namesAndFindingsStayOutOfTheLog() {
        var kept = new ListAppender<ILoggingEvent>();
        Logger root = (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
        kept.setContext(root.getLoggerContext());
        kept.start();
        root.addAppender(kept);
        try {
            Visitor therapist = SERVER.signedIn("therapist");
            therapist.post("/people", "name", "Unmistakable Surname".repeat(9), "language", "en");
            therapist.post("/people/none", "name", "Unmistakable Surname", "version", "Unmistakable");
            therapist.post("/episodes/Unmistakable/sections/history", "version", "0", "history.onset", "Unmistakable");
            therapist.get("/episodes/Unmistakable%20Surname/plan?x=Unmistakable");
            therapist.get("/people?text=%00Unmistakable&after=%ff");
            therapist.get("/today?whose=Unmistakable%0d%0aForged");
            SERVER.signedIn("lead").post("/clinic", "name", "Unmistakable", "version", "Unmistakable");
        } finally {
            root.detachAppender(kept);
        }
        String log = kept.list.stream()
                .map(event -> event.getFormattedMessage()
                        + (event.getThrowableProxy() == null
                                ? ""
                                : event.getThrowableProxy().getMessage()))
                .collect(Collectors.joining("\n"));
        assertThat(log).doesNotContainIgnoringCase("unmistakable");
    }
}
