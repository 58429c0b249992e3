/**
 * Where the care of one person is going: goals that can be seen to be met, a robust trend of each measure, the chance of a
 * goal by its date, standing still, what weeks four, six and eight ask for, and when care ends. Knows no questionnaire by
 * name except pain; scores and errors come from {@code measures}.
 */
@NullMarked
package slipway.reasoning.course;

import org.jspecify.annotations.NullMarked;
