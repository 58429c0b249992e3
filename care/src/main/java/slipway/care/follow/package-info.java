/**
 * Following a person between visits: from a plan and its check-ins to an answer for each. Reads check-in files, with every
 * mistake named at once; the decisions themselves are made in {@code slipway.reasoning.response}.
 */
@NullMarked
package slipway.care.follow;

import org.jspecify.annotations.NullMarked;
