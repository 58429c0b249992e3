package slipway.study.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import slipway.study.run.StudyPlan;
import slipway.study.run.StudyState;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** How far a run has come, as text, so that it can go on later. */
public final class StateJson {
    private static final JsonMapper MAPPER = new JsonMapper();

    private StateJson() {}

    /** The text of a state; nobody may add to it meanwhile. */
    public static String of(StudyState state) {
        var root = new LinkedHashMap<String, Object>();
        root.put("run", state.plan().fingerprint());
        var worlds = new ArrayList<Object>();
        for (int w = 0; w < state.plan().worlds().size(); w++) {
            var world = new LinkedHashMap<String, Object>();
            world.put("done", state.doneWords(w));
            world.put("sums", state.tally(w).numbers());
            worlds.add(world);
        }
        root.put("worlds", worlds);
        return MAPPER.writeValueAsString(root);
    }

    /**
     * The state of a text.
     *
     * @throws IllegalArgumentException if it is of another run, or no such text
     */
    public static StudyState read(StudyPlan plan, String text) {
        JsonNode root = tree(text);
        String run = root.path("run").asString("");
        if (!run.equals(plan.fingerprint())) {
            throw new IllegalArgumentException(
                    "the saved state is of another run (%s), this one is %s".formatted(run, plan.fingerprint()));
        }
        var state = new StudyState(plan);
        for (int w = 0; w < plan.worlds().size(); w++) {
            JsonNode world = root.path("worlds").path(w);
            state.restore(w, longs(world.path("done")), longs(world.path("sums")));
        }
        return state;
    }

    private static JsonNode tree(String text) {
        try {
            return MAPPER.readTree(text);
        } catch (JacksonException e) {
            throw new IllegalArgumentException("the saved state is not readable: " + e.getOriginalMessage(), e);
        }
    }

    private static long[] longs(JsonNode array) {
        long[] values = new long[array.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = array.get(i).asLong();
        }
        return values;
    }
}
