package slipway.study.load;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import slipway.study.data.StudyData;

/**
 * A place of trouble ({@code sites.csv} of the study).
 *
 * @param weight share of the simulated people, in proportion
 * @param exercises ids of the catalogue, the easiest first
 * @param testPosture joints of the leg raise that differ from lying straight; may be empty
 */
public record TroublePlace(String site, double weight, List<String> exercises, String testPosture)
        implements Serializable {
    private static final long serialVersionUID = 1L;

    public TroublePlace {
        exercises = List.copyOf(exercises);
        if (!(weight > 0) || exercises.isEmpty()) {
            throw new IllegalArgumentException(site + ": a place needs a weight above 0 and an exercise");
        }
    }

    static List<TroublePlace> all() {
        return StudyData.table("sites.csv").stream().map(TroublePlace::of).toList();
    }

    private static TroublePlace of(CSVRecord row) {
        return new TroublePlace(
                row.get("site"),
                Double.parseDouble(row.get("weight")),
                Arrays.asList(row.get("exercises").split("\\s+")),
                row.get("testPosture"));
    }
}
