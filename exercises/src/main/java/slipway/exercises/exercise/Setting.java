package slipway.exercises.exercise;

import java.util.List;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Prop;
import slipway.mechanics.body.Support;

/**
 * Where and with what an exercise is done.
 *
 * @param support what carries the body
 * @param base the named position that the poses differ from
 * @param surfaces what the person can be on
 * @param props what is needed; may be empty
 */
public record Setting(Support support, Position base, List<Surface> surfaces, List<PropUse> props) {
    /** A prop and where it is. */
    public record PropUse(Prop prop, PropPlace place) {}

    public Setting {
        surfaces = List.copyOf(surfaces);
        props = List.copyOf(props);
    }

    /** Whether the exercise needs this prop. */
    public boolean needs(Prop prop) {
        return props.stream().anyMatch(use -> use.prop() == prop);
    }
}
