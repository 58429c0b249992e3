package slipway.care.casefile;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import slipway.care.CareData;
import slipway.mechanics.body.Joint;
import slipway.mechanics.body.Position;
import slipway.mechanics.body.Posture;

/**
 * A neural test that a case file can name ({@code neural-tests.csv}; starting postures are common practice).
 *
 * @param joint the joint that moves, on the leg of the test
 * @param startDeg its angle at the start in degrees
 * @param rising whether the nerve is loaded as the angle rises
 * @param modelled whether the nerve model knows the nerve that it loads
 */
public record TestKind(String name, Position position, Joint joint, double startDeg, boolean rising, boolean modelled) {
    /** The raise of the leg without symptoms. */
    public static final String CROSSED = "crossed-straight-leg-raise";

    private static final Map<String, TestKind> ALL = load();

    /** The test of this name. */
    public static Optional<TestKind> find(String name) {
        return Optional.ofNullable(ALL.get(name));
    }

    /** All tests by name, in the order of the file. */
    public static Map<String, TestKind> all() {
        return ALL;
    }

    /** The posture in which it usually starts. */
    public Posture start() {
        return position.posture().with(joint, startDeg);
    }

    private static Map<String, TestKind> load() {
        var all = new LinkedHashMap<String, TestKind>();
        for (var row : CareData.table("neural-tests.csv")) {
            String joint = row.get("joint");
            all.put(
                    row.get("test"),
                    new TestKind(
                            row.get("test"),
                            Position.get(row.get("position")),
                            Joint.find(joint).orElseThrow(() -> new IllegalStateException("unknown joint " + joint)),
                            Double.parseDouble(row.get("startDeg")),
                            row.get("loading").equals("rising"),
                            row.get("modelled").equals("yes")));
        }
        return Collections.unmodifiableMap(all);
    }
}
