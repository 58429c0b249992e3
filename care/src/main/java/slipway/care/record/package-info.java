/**
 * What a clinic keeps: the ports that {@code store} fills and the types that go through them. {@link
 * slipway.care.record.Records} is the way in; {@code content} holds the case as sections, {@code chart} what is kept of
 * an episode, {@code follow} what comes between visits, {@code access} who may see what, {@code trail} who did what.
 * Nothing here knows SQL, HTTP or the time of day: instants and names are passed in with an {@link
 * slipway.care.record.Act}.
 */
@NullMarked
package slipway.care.record;

import org.jspecify.annotations.NullMarked;
