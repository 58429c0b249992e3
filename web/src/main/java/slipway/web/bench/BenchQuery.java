package slipway.web.bench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipway.care.bench.PostureReading;
import slipway.care.bench.Stance;
import slipway.mechanics.body.Person;
import slipway.mechanics.body.Side;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.pictures.figure.View;

/**
 * What the bench was asked, read from an address.
 *
 * @param first posture A
 * @param second posture B, if two are compared
 * @param tract the pathway
 * @param site the place to mark
 * @param side the side of the nerve, turned to the viewer
 * @param view empty for the usual one
 * @param person stature
 * @param typed every field as it was sent, so that what was mistyped is shown again
 * @param mistakes what could not be used, in words; fields with a mistake are as if they had not been sent
 */
public record BenchQuery(
        Stance first,
        Optional<Stance> second,
        Tract tract,
        Optional<Site> site,
        Side side,
        Optional<View> view,
        Person person,
        Map<String, String> typed,
        List<String> mistakes) {
    /** What goes before the fields of posture B. */
    public static final String SECOND = "b-";

    public BenchQuery {
        typed = Map.copyOf(typed);
        mistakes = List.copyOf(mistakes);
    }

    /** The sites of the pathway that can be marked, from proximal to distal. */
    public List<Site> sites() {
        return Site.of(tract.pathway()).values().stream()
                .filter(each -> PostureReading.onTract(each, tract))
                .toList();
    }

    /** The episode that the bench was opened from. */
    public Optional<String> episode() {
        return Optional.ofNullable(typed.get("episode")).filter(id -> !id.isEmpty());
    }

    /** Whether two postures are compared. */
    public boolean compares() {
        return second.isPresent();
    }
}
