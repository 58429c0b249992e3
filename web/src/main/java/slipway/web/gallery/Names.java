package slipway.web.gallery;

import slipway.documents.words.Words;
import slipway.exercises.exercise.Exercise;
import slipway.exercises.exercise.Language;
import slipway.mechanics.nerve.Tract;

/** What the pages call things that files name by a key. */
public final class Names {
    private static final Words WORDS = Words.beside(Names.class, Language.EN);
    private static final String OTHER = "other-";

    private Names() {}

    /** What an exercise is for. */
    public static String purpose(Exercise exercise) {
        return WORDS.get("is." + word(exercise.purpose().key()));
    }

    /** How the body is carried. */
    public static String position(Exercise exercise) {
        return WORDS.get("support." + word(exercise.setting().support().key()));
    }

    /** A pathway; a name that the nerve model does not know stays as the file has it. */
    public static String nerve(String key) {
        return Tract.find(key).map(tract -> WORDS.get("tract." + tract.key())).orElse(key);
    }

    /** A joint, as the nerve model names those that it leaves out. */
    public static String joint(String key) {
        return key.startsWith(OTHER)
                ? WORDS.get("joint.other", WORDS.get("joint." + key.substring(OTHER.length())))
                : WORDS.get("joint." + key);
    }

    private static String word(String key) {
        return key.replace(' ', '-');
    }
}
