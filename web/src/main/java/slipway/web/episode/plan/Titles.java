package slipway.web.episode.plan;

import slipway.exercises.catalogue.Catalogue;
import slipway.exercises.exercise.Language;
import slipway.web.form.FormView;

/** Names of exercises for pages. */
public final class Titles {
    private Titles() {}

    /** The name of an exercise; its id if the catalogue no longer has it. */
    public static String of(String id) {
        return Catalogue.bundled()
                .find(id)
                .map(exercise -> exercise.name().in(Language.EN))
                .orElse(id);
    }

    /** The i-th exercise that the therapist picked. */
    public static String item(FormView form, int index) {
        return form.value("choices.exercises[" + index + "]");
    }
}
