package slipway.web.security;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.UsernamePasswordAuthenticationToken;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.stereotype.Component;
import slipway.care.record.Records;
import slipway.care.record.Role;
import slipway.web.shell.StaffUser;

/** Gives a session to whoever has shown who they are, in whichever way, and takes it back. */
@Component
class Entrance {
    private static final String IDLE_MINUTES = "15";

    private final Records records;
    private final SecurityContextRepository contexts;

    Entrance(Records records, SecurityContextRepository contexts) {
        this.records = records;
        this.contexts = contexts;
    }

    /** Signs in with every factor that the account asks for; gives where to go. */
    String enter(StaffUser user, HttpServletRequest request, HttpServletResponse response) {
        List<GrantedAuthority> granted = new ArrayList<>();
        granted.add(new SimpleGrantedAuthority(Authorities.STAFF));
        user.roles().forEach(role -> granted.add(new SimpleGrantedAuthority(role.name())));
        keep(user, granted, request, response);
        String minutes = records.clinics()
                .setting(user.clinicId(), "idleMinutes", IDLE_MINUTES)
                .value();
        request.getSession().setMaxInactiveInterval((int)
                Duration.ofMinutes(Integer.parseInt(minutes)).toSeconds());
        return "redirect:" + home(user);
    }

    /** Lets somebody whose password was right, and no more, as far as the page that asks for the code. */
    void letWait(String login, HttpServletRequest request, HttpServletResponse response) {
        keep(login, List.of(new SimpleGrantedAuthority(Authorities.PENDING)), request, response);
    }

    private void keep(
            Object principal,
            List<? extends GrantedAuthority> granted,
            HttpServletRequest request,
            HttpServletResponse response) {
        // A new id: whoever knew the old one must not be signed in by this.
        request.getSession();
        request.changeSessionId();
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(UsernamePasswordAuthenticationToken.authenticated(principal, null, granted));
        SecurityContextHolder.setContext(context);
        contexts.saveContext(context, request, response);
    }

    /** Ends the session. */
    static void leave(HttpServletRequest request, HttpServletResponse response) {
        SecurityContextHolder.clearContext();
        @Nullable HttpSession session = request.getSession(false);
        if (session != null) {
            session.invalidate();
        }
        // Whatever the browser kept of these pages goes with the session.
        response.setHeader("Clear-Site-Data", "\"cache\"");
    }

    /** Where the work of somebody begins. */
    static String home(StaffUser user) {
        return user.roles().stream().allMatch(role -> role == Role.AUDITOR) ? "/clinic" : "/today";
    }
}
