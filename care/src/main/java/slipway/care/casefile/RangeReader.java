package slipway.care.casefile;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import slipway.care.casefile.RangesOfMotion.Ends;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Side;

/** Reads measured ranges of motion and pressure limits. */
final class RangeReader {
    private RangeReader() {}

    static RangesOfMotion read(Fields root, Report report) {
        Fields ranges = root.child("rangeOfMotion");
        Map<Joint, Ends> trunk = readBlock(ranges.child("trunk"), report);
        var bySide = new EnumMap<Side, Map<Joint, Ends>>(Side.class);
        for (Side side : Side.values()) {
            Map<Joint, Ends> ends = readBlock(ranges.child(side == Side.RIGHT ? "right" : "left"), report);
            ends.putAll(trunk);
            bySide.put(side, ends);
        }
        return new RangesOfMotion(bySide);
    }

    private static Map<Joint, Ends> readBlock(Fields block, Report report) {
        var ends = new EnumMap<Joint, Ends>(Joint.class);
        for (String part : block.keys()) {
            Fields movements = block.child(part);
            for (String key : movements.keys()) {
                Optional<Movement> movement = Movement.find(part, key);
                OptionalDouble angleDeg = movement.isPresent()
                        ? jointDeg(movement.get(), movements.child(key), report)
                        : OptionalDouble.empty();
                if (movement.isPresent() && angleDeg.isPresent()) {
                    ends.merge(movement.get().joint(), end(movement.get(), angleDeg), RangeReader::merged);
                }
            }
        }
        ends.forEach((joint, range) -> {
            if (range.lowDeg().orElse(-360) >= range.highDeg().orElse(360)) {
                report.add(
                        block,
                        "the two ends of %s leave no range, were %s and %s deg"
                                .formatted(
                                        joint.key(),
                                        range.lowDeg().getAsDouble(),
                                        range.highDeg().getAsDouble()));
            }
        });
        return ends;
    }

    private static Ends end(Movement movement, OptionalDouble angleDeg) {
        return movement.towardsPositive()
                ? new Ends(OptionalDouble.empty(), angleDeg)
                : new Ends(angleDeg, OptionalDouble.empty());
    }

    private static Ends merged(Ends one, Ends other) {
        return new Ends(
                one.lowDeg().isPresent() ? one.lowDeg() : other.lowDeg(),
                one.highDeg().isPresent() ? one.highDeg() : other.highDeg());
    }

    /** The joint angle of a measured end if the joint can take it. */
    private static OptionalDouble jointDeg(Movement movement, Fields measured, Report report) {
        OptionalDouble written = measured.asNumber();
        return written.isPresent()
                ? report.checkedDeg(measured, movement.joint(), movement.jointDeg(written.getAsDouble()))
                : written;
    }

    static List<PressureLimit> readPressureLimits(Fields root, Report report) {
        var limits = new ArrayList<PressureLimit>();
        for (Fields entry : root.list("pressureLimits")) {
            Optional<Movement> movement = Movement.find(
                    entry.findText("joint").orElse(""),
                    entry.findText("movement").orElse(""));
            if (movement.isEmpty() && entry.has("movement") && entry.has("joint")) {
                report.add(
                        entry.child("movement"),
                        "must be a movement of the %s, was \"%s\""
                                .formatted(
                                        entry.child("joint").written(),
                                        entry.child("movement").written()));
            }
            Optional<Side> side = entry.findSide("side");
            if (movement.isEmpty() || side.isEmpty()) {
                continue;
            }
            jointDeg(movement.get(), entry.child("limitDeg"), report)
                    .ifPresent(angleDeg -> limits.add(new PressureLimit(
                            side.get(),
                            movement.get().joint(),
                            movement.get().towardsPositive(),
                            angleDeg,
                            entry.findText("because").orElse(""))));
        }
        return limits;
    }
}
