package slipway.web.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import slipway.web.TestServer;

class HeadersTest {
    private static final TestServer SERVER = TestServer.shared();

    @Test
    void pagesAllowNothingFromElsewhereAndNothingInline() {
        HttpResponse<String> page = SERVER.signedIn("therapist").get("/today");
        String policy = page.headers().firstValue("Content-Security-Policy").orElse("");
        assertThat(policy)
                .contains("default-src 'none'")
                .doesNotContain("unsafe")
                .doesNotContain("*");
        assertThat(page.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        assertThat(page.headers().firstValue("Referrer-Policy")).contains("no-referrer");
        assertThat(page.headers().firstValue("Cache-Control").orElse("")).contains("no-store");
        assertThat(page.body())
                .doesNotContain("<script>")
                .doesNotContain(" style=\"")
                .doesNotContain("onclick");
    }

    @Test
    void theCookieIsOutOfReachOfScriptsAndOtherSites() {
        HttpResponse<String> page = SERVER.visitor().get("/sign-in");
        assertThat(page.headers().firstValue("Set-Cookie").orElse(""))
                .contains("HttpOnly")
                .contains("SameSite=Strict");
    }

    @Test
    void filesAreServedForLongAndPathsOutOfTheFolderAreNot() {
        TestServer.Visitor visitor = SERVER.visitor();
        HttpResponse<String> style = visitor.get("/assets/" + Assets.VERSION + "/slipway.css");
        assertThat(style.statusCode()).isEqualTo(200);
        assertThat(style.headers().firstValue("Cache-Control").orElse("")).contains("max-age");
        assertThat(visitor.get("/assets/" + Assets.VERSION + "/..%2fapplication.properties")
                        .statusCode())
                .isGreaterThanOrEqualTo(400);
        assertThat(visitor.get("/assets/x/%2e%2e/%2e%2e/application.properties").statusCode())
                .isGreaterThanOrEqualTo(400);
    }

    @Test
    void plainHttpGetsNoPromiseOfHttpsOnly() {
        HttpResponse<String> page = SERVER.visitor().get("/sign-in");
        assertThat(page.headers().firstValue("Strict-Transport-Security")).isEmpty();
    }

    @Test
    void theHostOfTheRequestIsNotRepeated() {
        HttpResponse<String> answer = SERVER.visitor()
                .send(HttpRequest.newBuilder(URI.create(SERVER.address() + "/today"))
                        .GET());
        assertThat(TestServer.location(answer)).startsWith("/");
    }
}
