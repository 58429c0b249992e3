/**
 * Who may do what: sign-in, second factor, sessions, the table of routes, the headers of every answer. What is not in
 * the table of routes is refused.
 */
@NullMarked
package slipway.web.security;

import org.jspecify.annotations.NullMarked;
