package slipway.web.shell;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Component;
import slipway.documents.words.Words;
import slipway.exercises.exercise.Language;
import slipway.web.WebOptions;

/** Makes the frame of a page from a request. */
@Component
public class Pages {
    private static final Words WORDS = Words.beside(Pages.class, Language.EN);

    private static final int SECONDS_A_MINUTE = 60;

    private final WebOptions options;

    Pages(WebOptions options) {
        this.options = options;
    }

    /** The frame of a page that belongs to a part of the program. */
    public Page page(HttpServletRequest request, Area area, String title) {
        return page(request, Optional.of(area), title);
    }

    /** The frame of a page outside all parts. */
    public Page page(HttpServletRequest request, String title) {
        return page(request, Optional.empty(), title);
    }

    /** The frame of a page of somebody who is not of the staff: no session is made, read or kept awake by it. */
    public Page pageApart(HttpServletRequest request, String title) {
        return page(request, Optional.empty(), title, Optional.empty(), 0, Optional.empty());
    }

    /** Version of the program, for stamps of results. */
    public static String version() {
        return Assets.PROGRAM;
    }

    /** Title of the page of an error status. */
    String title(int status) {
        return WORDS.get("error.title." + status);
    }

    private Page page(HttpServletRequest request, Optional<Area> area, String title) {
        return page(request, area, title, findStaff(), idleMinutes(request), Notices.take(request));
    }

    private Page page(
            HttpServletRequest request,
            Optional<Area> area,
            String title,
            Optional<StaffUser> staff,
            int idleMinutes,
            Optional<String> notice) {
        @Nullable CsrfToken csrf = (CsrfToken) request.getAttribute(CsrfToken.class.getName());
        return new Page(
                title,
                area,
                staff,
                csrf == null ? "_csrf" : csrf.getParameterName(),
                csrf == null ? "" : csrf.getToken(),
                options.demo(),
                Assets.PROGRAM,
                idleMinutes,
                notice,
                WORDS);
    }

    private static int idleMinutes(HttpServletRequest request) {
        @Nullable HttpSession session = request.getSession(false);
        return session == null ? 0 : session.getMaxInactiveInterval() / SECONDS_A_MINUTE;
    }

    /** Who is signed in with every factor that the account asks for. */
    public static Optional<StaffUser> findStaff() {
        @Nullable Authentication held = SecurityContextHolder.getContext().getAuthentication();
        return held != null && held.isAuthenticated() && held.getPrincipal() instanceof StaffUser user
                ? Optional.of(user)
                : Optional.empty();
    }

    /**
     * Who is signed in.
     *
     * @throws IllegalStateException if nobody is; the routes let nobody else through
     */
    public static StaffUser staff() {
        return findStaff().orElseThrow(() -> new IllegalStateException("nobody is signed in"));
    }
}
