package slipway.reasoning.response.checkin;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A word of a closed list, written in files in small letters. */
public interface Coded {
    /** The name of the constant. */
    String name();

    /** The word in files, for example {@code tingling}. */
    default String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The constant of this word, if it is one. */
    static <E extends Enum<E> & Coded> Optional<E> find(Class<E> type, String word) {
        return Arrays.stream(type.getEnumConstants())
                .filter(value -> value.key().equals(word))
                .findFirst();
    }

    /** All words in their order. */
    static <E extends Enum<E> & Coded> List<String> keys(Class<E> type) {
        return Arrays.stream(type.getEnumConstants()).map(Coded::key).toList();
    }
}
