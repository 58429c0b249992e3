/**
 * Ways of dosing that are compared: what each prescribes from what people report and what visits find. None sees the
 * hidden state.
 */
@NullMarked
package slipway.study.policy;

import org.jspecify.annotations.NullMarked;
