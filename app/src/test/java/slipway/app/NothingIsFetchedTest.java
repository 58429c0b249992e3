package slipway.app;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.net.DatagramSocket;
import java.net.Socket;
import java.net.URL;
import java.net.URLConnection;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The program asks nobody for anything while it runs: it works in a clinic without internet, and tells nobody about it. */
class NothingIsFetchedTest {
    /** What makes a browser ask elsewhere. Names of XML vocabularies look like addresses and are none. */
    private static final Pattern ELSEWHERE = Pattern.compile("(?:src|href|action)\\s*=\\s*[\"']?(?:https?:)?//"
            + "|url\\(\\s*[\"']?(?:https?:)?//"
            + "|@import\\s+(?:url\\(|[\"'])"
            + "|(?:fetch|import|WebSocket|EventSource|sendBeacon)\\s*\\(\\s*[\"'](?:https?:|wss?:)?//");

    @Test
    void noClassOpensAConnection() {
        JavaClasses program = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("slipway");
        assertThat(program.size()).isGreaterThan(500);
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.net.http..", "org.springframework.web.client..")
                .orShould()
                .dependOnClassesThat()
                .areAssignableTo(URLConnection.class)
                .orShould()
                .dependOnClassesThat()
                .areAssignableTo(Socket.class)
                .orShould()
                .dependOnClassesThat()
                .areAssignableTo(DatagramSocket.class)
                .orShould()
                .callMethod(URL.class, "openStream")
                .orShould()
                .callMethod(URL.class, "openConnection")
                .check(program);
    }

    @Test
    void noPageStyleOrScriptPointsElsewhere() throws IOException {
        List<Path> files = sentToBrowsers();
        assertThat(files).hasSizeGreaterThan(30);
        var found = new ArrayList<String>();
        for (Path file : files) {
            ELSEWHERE
                    .matcher(Files.readString(file))
                    .results()
                    .map(MatchResult::group)
                    .forEach(match -> found.add(match + " in " + file));
        }
        assertThat(found).isEmpty();
    }

    private static List<Path> sentToBrowsers() throws IOException {
        var files = new ArrayList<Path>();
        for (String module : List.of("web", "documents")) {
            try (Stream<Path> all = Files.walk(Path.of("..", module, "src/main"))) {
                all.filter(file -> file.toString().matches(".*\\.(jte|html|css|js|mjs|svg|webmanifest)"))
                        .forEach(files::add);
            }
        }
        return files;
    }
}
