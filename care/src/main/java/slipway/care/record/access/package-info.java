/** Who may see what: clinics and their settings, accounts, teams, breaking the glass, access links of patients. */
@NullMarked
package slipway.care.record.access;

import org.jspecify.annotations.NullMarked;
