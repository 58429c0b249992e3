/** {@code slipway sheet}, {@code guide}, {@code figure}, {@code motion}: what the person takes home, and its pictures. */
@NullMarked
package slipway.app.papers;

import org.jspecify.annotations.NullMarked;
