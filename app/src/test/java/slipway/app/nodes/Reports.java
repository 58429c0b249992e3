package slipway.app.nodes;

import java.io.IOException;
import java.net.http.HttpResponse;

/** Reports of a person at home, as the page sends them. */
final class Reports {
    private Reports() {}

    /** The first exercise on the page of a person at home. */
    static String exercise(HttpResponse<String> home) {
        return home.body().replaceAll("(?s).*(?:<option|name=\"exercise\") value=\"([^\"]+)\".*", "$1");
    }

    /** Sends a report without anything that worries; gives the status of the answer. */
    static int send(Browser browser, String server, String id, String exercise)
            throws IOException, InterruptedException {
        return browser.post(
                        server,
                        "/home/report",
                        "id",
                        id,
                        "exercise",
                        exercise,
                        "done",
                        "all",
                        "planned",
                        "6",
                        "before",
                        "2",
                        "worst",
                        "2",
                        "kind",
                        "tingling",
                        "settle",
                        "2",
                        "none",
                        "yes")
                .statusCode();
    }
}
