/**
 * The case file: what is known of one person in one episode, as YAML. {@link slipway.care.casefile.CaseFiles} turns
 * bytes into a {@link slipway.care.casefile.CaseFile} or into the list of every mistake with its place. Nothing here
 * judges a finding, opens a file or asks for the time.
 */
@NullMarked
package slipway.care.casefile;

import org.jspecify.annotations.NullMarked;
