package slipway.documents.sheet;

import java.util.List;

/** Rules for what may stand on a sheet, said in one way. */
final class Checks {
    private Checks() {}

    static String filled(String what, String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException(what + " must not be blank");
        }
        return text.strip();
    }

    static List<String> filledAll(String what, List<String> texts) {
        for (int i = 0; i < texts.size(); i++) {
            filled("%s[%d]".formatted(what, i), texts.get(i));
        }
        return texts.stream().map(String::strip).toList();
    }

    static int within(String what, int low, int high, int value) {
        if (value < low || value > high) {
            throw new IllegalArgumentException("%s must be within %d and %d, was %d".formatted(what, low, high, value));
        }
        return value;
    }
}
