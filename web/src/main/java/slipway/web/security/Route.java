package slipway.web.security;

import java.util.Set;

/**
 * One line of the table of routes.
 *
 * @param method HTTP method
 * @param pattern of the path
 * @param who words that say who may use it: {@code public}, {@code pending} (password given, second factor not yet),
 *     {@code signed-in}, {@code staff} (any role), {@code patient} (holder of a patient's link), or roles
 */
record Route(String method, String pattern, Set<String> who) {
    Route {
        who = Set.copyOf(who);
        if (who.isEmpty()) {
            throw new IllegalArgumentException("a route names who may use it: " + method + " " + pattern);
        }
    }
}
