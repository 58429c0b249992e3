package slipway.store.tables;

/** Text that both databases keep as it is. */
final class KeepableText {
    private KeepableText() {}

    /**
     * The text itself.
     *
     * @throws IllegalArgumentException if it holds a NUL, which PostgreSQL refuses, or half of a surrogate pair, which
     *     SQLite would change silently
     */
    static String checked(String text) {
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            boolean pair = Character.isHighSurrogate(letter)
                    && i + 1 < text.length()
                    && Character.isLowSurrogate(text.charAt(i + 1));
            if (letter == 0 || (Character.isSurrogate(letter) && !pair)) {
                throw new IllegalArgumentException("text must hold whole characters and no NUL, position " + i);
            }
            i += pair ? 1 : 0;
        }
        return text;
    }
}
