/**
 * YAML files written by hand, read so that every mistake can be shown with its line and column: bounded in size and
 * depth, without aliases, checked against a JSON schema. Knows nothing of what the files mean.
 */
@NullMarked
package slipway.exercises.yaml;

import org.jspecify.annotations.NullMarked;
