package slipway.documents.guide;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slipway.documents.sheet.Dose;
import slipway.pictures.figure.MovingFigure;
import tools.jackson.databind.json.JsonMapper;

/** What the script of the guide reads: doses as numbers, figures as tracks, words. */
final class GuideData {
    private static final String LIVE = "live.";

    /** A dose that is held or goes on says nothing about the way there: the figure goes slowly, as anywhere. */
    private static final int HELD_WAY_SECONDS = 3;

    private GuideData() {}

    static String json(List<GuideExercise> exercises, GuideTexts texts) {
        var words = new LinkedHashMap<String, String>();
        texts.own().keys().stream()
                .filter(key -> key.startsWith(LIVE))
                .forEach(key ->
                        words.put(key.substring(LIVE.length()), texts.own().open(key)));
        var data = new LinkedHashMap<String, Object>();
        data.put("words", words);
        data.put("exercises", exercises.stream().map(GuideData::exercise).toList());
        // No text can close the element that the data stands in.
        return JsonMapper.shared().writeValueAsString(data).replace("<", "\\u003c");
    }

    private static Map<String, Object> exercise(GuideExercise exercise) {
        var data = new LinkedHashMap<String, Object>();
        data.put("usual", pace(exercise.usualDose(), 1));
        data.put("easier", pace(exercise.easierDose(), exercise.easierReach()));
        data.put("there", exercise.cues().there());
        data.put("back", exercise.cues().back());
        data.put(
                "tracks",
                exercise.figure().tracks().stream().map(GuideData::track).toList());
        return data;
    }

    /** Seconds each way, of holding, how many in a round, how many rounds, how far. */
    private static Map<String, Object> pace(Dose dose, double reach) {
        var pace = new LinkedHashMap<String, Object>();
        if (dose instanceof Dose.Repeated repeated) {
            put(pace, repeated.secondsEachWay(), 0, repeated.repetitions(), repeated.sets());
        } else if (dose instanceof Dose.Held held) {
            put(pace, HELD_WAY_SECONDS, held.holdSeconds(), held.repetitions(), 1);
        } else if (dose instanceof Dose.Lasting lasting) {
            put(pace, HELD_WAY_SECONDS, 0, lasting.minutes(), 1);
            pace.put("minutes", true);
        }
        pace.put("reach", reach);
        return pace;
    }

    private static void put(Map<String, Object> pace, int way, int hold, int count, int rounds) {
        pace.put("way", way);
        pace.put("hold", hold);
        pace.put("count", count);
        pace.put("rounds", rounds);
    }

    private static Map<String, Object> track(MovingFigure.Track track) {
        return Map.of(
                "at",
                track.spots().stream()
                        .map(spot -> List.of(spot.element(), spot.attribute()))
                        .toList(),
                "v",
                track.values());
    }
}
