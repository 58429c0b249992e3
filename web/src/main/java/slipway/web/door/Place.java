package slipway.web.door;

import jakarta.servlet.http.HttpServletRequest;

/** The two places that a code may open. The cookie of one is worth nothing in the other. */
public enum Place {
    /** The plan at home. */
    HOME("slipway-home", "/home", ""),
    /** The questions before the first visit. */
    BEFORE("slipway-before", "/before", "-before");

    private final String cookie;
    private final String path;
    private final String mark;

    Place(String cookie, String path, String mark) {
        this.cookie = cookie;
        this.path = path;
        this.mark = mark;
    }

    /** The place that an address belongs to; an address of neither has no cookie anyway. */
    static Place of(HttpServletRequest request) {
        return request.getRequestURI().startsWith(BEFORE.path) ? BEFORE : HOME;
    }

    String cookie() {
        return cookie;
    }

    /** Its first page; the cookie is sent there and below only. */
    public String path() {
        return path;
    }

    /** What keeps the signatures of the places apart. */
    String mark() {
        return mark;
    }
}
