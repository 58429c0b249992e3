/**
 * The pages: the therapist's workbench and the patient's guide over HTTP. Each feature has a package with its controller
 * and its words; what a page shows is computed in the modules below and only arranged here.
 */
@NullMarked
package slipway.web;

import org.jspecify.annotations.NullMarked;
