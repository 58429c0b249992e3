/**
 * From a page built in code to a tagged PDF (PDF/UA-1). The only place that knows the layout engine: what is printed is
 * built elsewhere with {@link slipway.documents.pdf.PrintDocument}. Nothing here reads the clock, the network or a file
 * outside the program, so the same page gives the same bytes everywhere.
 */
@NullMarked
package slipway.documents.pdf;

import org.jspecify.annotations.NullMarked;
