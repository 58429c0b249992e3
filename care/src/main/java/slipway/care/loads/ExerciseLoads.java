package slipway.care.loads;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slipway.exercises.exercise.Exercise;
import slipway.mechanics.body.Posture;
import slipway.mechanics.nerve.NerveModel;
import slipway.mechanics.nerve.Pathway;
import slipway.mechanics.nerve.PostureResponse;
import slipway.mechanics.nerve.Site;
import slipway.mechanics.nerve.Tract;
import slipway.mechanics.parameters.FittedParameters;
import slipway.reasoning.dose.StandardLoads;

/**
 * One exercise at all places of the nerves that its file names, on a standard body with the angles of its picture.
 *
 * @param pathway the system of nerves; if it is not validated, whoever reads this must be told
 * @param places from proximal to distal
 * @param notModelled joints that take part and that the nerve model leaves out, by name
 */
public record ExerciseLoads(Pathway pathway, List<At> places, List<String> notModelled) {
    private static final int KEPT = 200;
    private static final Map<Asked, List<At>> KNOWN = Collections.synchronizedMap(new Kept());

    public ExerciseLoads {
        places = List.copyOf(places);
        notModelled = List.copyOf(notModelled);
    }

    /** What it does at one place. */
    public record At(Site site, StandardLoads.Loads loads) {
        /** Whether there is a glide to speak of, but not even its direction from start to end is sure. */
        public boolean wayNotKnown() {
            return loads.label() != StandardLoads.Label.NO_MOVEMENT
                    && loads.netGlideMm().low() < 0
                    && loads.netGlideMm().high() > 0;
        }
    }

    /**
     * The loads with all draws, one entry for each system of nerves; empty if the file names no modelled nerve or holds
     * no movement. Takes some tenths of a second the first time; the last {@value #KEPT} answers are kept.
     */
    public static List<ExerciseLoads> of(Exercise exercise) {
        List<Posture> way = StandardBody.way(exercise);
        List<Tract> tracts = exercise.use().modelledTracts();
        if (way.stream().distinct().count() < 2) {
            return List.of();
        }
        return Arrays.stream(Pathway.values())
                .filter(pathway -> tracts.stream().anyMatch(tract -> tract.pathway() == pathway))
                .map(pathway -> new ExerciseLoads(
                        pathway, places(new Asked(way, pathway, tracts)), StandardBody.notModelled(exercise, pathway)))
                .toList();
    }

    private record Asked(List<Posture> way, Pathway pathway, List<Tract> tracts) {}

    private static List<At> places(Asked asked) {
        List<At> known = KNOWN.get(asked);
        if (known == null) {
            // Two that ask at once may both compute it: cheaper than letting everybody wait for one.
            known = computed(asked);
            KNOWN.put(asked, known);
        }
        return known;
    }

    private static List<At> computed(Asked asked) {
        var nerve = new Remembering(Bodies.of(asked.pathway()));
        var places = new ArrayList<At>();
        for (Site site : Site.of(asked.pathway()).values()) {
            if (asked.tracts().stream().anyMatch(site::liesOn)) {
                places.add(new At(site, StandardLoads.at(nerve, site).along(asked.way())));
            }
        }
        return List.copyOf(places);
    }

    /** Made when first needed; a model answers one thread after the other. */
    private static final class Bodies {
        private static final NerveModel BACK = StandardBody.nerve(Pathway.BACK, FittedParameters.DRAWS);
        private static final NerveModel FRONT = StandardBody.nerve(Pathway.FRONT, FittedParameters.DRAWS);

        static NerveModel of(Pathway pathway) {
            return pathway == Pathway.BACK ? BACK : FRONT;
        }
    }

    /** Every place asks the same postures: each is solved once. For one thread. */
    private static final class Remembering implements NerveModel {
        private final NerveModel nerve;
        private final Map<Posture, PostureResponse> answers = new HashMap<>();

        Remembering(NerveModel nerve) {
            this.nerve = nerve;
        }

        @Override
        public int draws() {
            return nerve.draws();
        }

        @Override
        public PostureResponse respond(Posture posture) {
            return respondAlong(List.of(posture)).get(0);
        }

        @Override
        public List<PostureResponse> respondAlong(List<Posture> motion) {
            List<Posture> missing = motion.stream()
                    .filter(posture -> !answers.containsKey(posture))
                    .distinct()
                    .toList();
            List<PostureResponse> fresh = nerve.respondAlong(missing);
            for (int i = 0; i < fresh.size(); i++) {
                answers.put(missing.get(i), fresh.get(i));
            }
            return motion.stream().map(answers::get).toList();
        }
    }

    private static final class Kept extends LinkedHashMap<Asked, List<At>> {
        private static final long serialVersionUID = 1L;

        Kept() {
            super(KEPT + 1, 1, true);
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<Asked, List<At>> eldest) {
            return size() > KEPT;
        }
    }
}
