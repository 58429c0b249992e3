package slipway.documents.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipway.exercises.exercise.Language;

/**
 * All that stands on a sheet for home.
 *
 * @param head whom it is for and who gave it
 * @param language of everything on it; all texts given must be in it
 * @param unload what to change in the day, before any exercise; may be empty
 * @param rules numbers of the general rules printed on it
 * @param exercises in the order of doing; may be empty, and more than four are not kept up with
 * @param cautions for this person; may be empty. The general cautions are printed always
 * @param guideAddress where the moving guide is; printed as a code to photograph. Absent: no code and no mention
 */
public record HomeSheet(
        Head head,
        Language language,
        List<String> unload,
        Rules rules,
        List<SheetExercise> exercises,
        List<String> cautions,
        Optional<String> guideAddress) {

    /** Longest address that still gives a code that a phone reads from paper. */
    private static final int LONGEST_ADDRESS = 300;

    public HomeSheet {
        unload = Checks.filledAll("unload", unload);
        exercises = List.copyOf(exercises);
        cautions = Checks.filledAll("cautions", cautions);
        Checks.within("number of exercises", 0, 12, exercises.size());
        guideAddress.ifPresent(address -> {
            Checks.filled("guide address", address);
            Checks.within("length of the guide address", 1, LONGEST_ADDRESS, address.length());
        });
    }

    /** The same sheet with a code that leads to the moving guide. */
    public HomeSheet leadingTo(String address) {
        return new HomeSheet(head, language, unload, rules, exercises, cautions, Optional.of(address));
    }

    /**
     * Head of the sheet.
     *
     * @param personName as the person wishes to be called
     * @param part the limb that is treated
     * @param given day on which the sheet was given
     * @param version of this sheet for this person, such as "3"; the phone shows the same
     * @param clinic who gave it
     * @param emergencyNumber to call for help here and now, such as 911 or 112
     * @param mark printed above the name when not empty, such as "Invented person"
     */
    public record Head(
            String personName,
            BodyPart part,
            LocalDate given,
            String version,
            Clinic clinic,
            String emergencyNumber,
            String mark) {
        public Head {
            personName = Checks.filled("person's name", personName);
            version = Checks.filled("sheet version", version);
            emergencyNumber = Checks.filled("emergency number", emergencyNumber);
            mark = mark.strip();
        }
    }

    /** Who gave the sheet; the therapist's name may be empty. */
    public record Clinic(String name, String therapist, String phone) {
        public Clinic {
            name = Checks.filled("clinic name", name);
            therapist = therapist.strip();
            phone = Checks.filled("clinic phone", phone);
        }
    }

    /**
     * Numbers in the general rules: the therapist's or the program's, never this package's.
     *
     * @param settleMinutes after this time a good session has settled
     * @param restMinutes symptoms that last longer call for the easier-day dose
     */
    public record Rules(int settleMinutes, int restMinutes) {
        public Rules {
            Checks.within("minutes to settle", 1, 60, settleMinutes);
            Checks.within("minutes that call for less", settleMinutes, 24 * 60, restMinutes);
        }
    }
}
