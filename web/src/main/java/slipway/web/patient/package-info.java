/** The pages of the person at home: opening the code, the report, and the answer in plain words. */
@NullMarked
package slipway.web.patient;

import org.jspecify.annotations.NullMarked;
