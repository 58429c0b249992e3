package slipway.web.security;

import java.util.Optional;
import java.util.Set;

/**
 * One line of the table of routes.
 *
 * @param method HTTP method
 * @param pattern of the path
 * @param who words that say who may use it: {@code public}, {@code pending} (password given, second factor not yet),
 *     {@code signed-in}, {@code staff} (any role), {@code patient} (holder of a patient's link), or roles;
 *     for programs {@code scope:} and what their token must be for, beside the roles of its account
 */
record Route(String method, String pattern, Set<String> who) {
    /** In front of what a token may be used for. */
    static final String SCOPE = "scope:";

    Route {
        who = Set.copyOf(who);
        if (who.isEmpty()) {
            throw new IllegalArgumentException("a route names who may use it: " + method + " " + pattern);
        }
    }

    /** Whether it is for other programs, which show a token. */
    boolean isForPrograms() {
        return pattern.startsWith("/api/");
    }

    /** What a token must be for; empty if nothing. */
    Optional<String> scope() {
        return who.stream().filter(word -> word.startsWith(SCOPE)).findFirst();
    }

    /** Those without the scope. */
    String[] roles() {
        return who.stream().filter(word -> !word.startsWith(SCOPE)).sorted().toArray(String[]::new);
    }
}
