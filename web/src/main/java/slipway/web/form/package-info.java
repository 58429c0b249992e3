/**
 * Between a form and a part of the record: names of fields are paths in a case file, so that what a form sends is
 * checked by the same rules as a file and each mistake finds its field.
 */
@NullMarked
package slipway.web.form;

import org.jspecify.annotations.NullMarked;
