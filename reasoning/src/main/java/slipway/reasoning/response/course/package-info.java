/**
 * The course of one exercise between two visits: the sessions so far, the dose in force, what is barred and since when;
 * the facts that the rules ask for; and how a ruling moves the dose. Values only: each step gives a new course.
 */
@NullMarked
package slipway.reasoning.response.course;

import org.jspecify.annotations.NullMarked;
