package slipway.pictures.svg;

/**
 * What a picture says to someone who does not see it.
 *
 * @param idPrefix makes the ids unique within a page: a letter, then letters, digits, {@code -} or {@code _}
 * @param title short name of the picture
 * @param description what it shows, in a sentence or two
 */
public record Words(String idPrefix, String title, String description) {
    public Words {
        if (!idPrefix.matches("[A-Za-z][A-Za-z0-9_-]*")) {
            throw new IllegalArgumentException(
                    "the id prefix of a picture must be a letter, then letters, digits, - or _, was \"" + idPrefix
                            + "\"");
        }
        if (title.isBlank() || description.isBlank()) {
            throw new IllegalArgumentException("a picture needs a title and a description for screen readers");
        }
    }
}
