/**
 * The rules of response as data: conditions on facts of a report and its history, and what each rule asks for. All rules
 * that match count; the most careful one decides. They stand above every estimate. Knows no person and keeps no state.
 */
@NullMarked
package slipway.reasoning.response.rules;

import org.jspecify.annotations.NullMarked;
