package slipway.web.shell;

import java.util.List;
import java.util.Optional;
import slipway.documents.words.Words;

/**
 * The frame of a page.
 *
 * @param title what the page is about
 * @param area the part of the program that it belongs to; empty outside
 * @param staff who is signed in; empty before
 * @param csrfField name of the form field that proves a form came from us
 * @param csrfToken its value
 * @param demo whether all people are invented
 * @param version of the program
 * @param idleMinutes after so long without a key or click, whoever is signed in is signed out
 * @param notice what just happened, in one sentence
 * @param words of the frame
 */
public record Page(
        String title,
        Optional<Area> area,
        Optional<StaffUser> staff,
        String csrfField,
        String csrfToken,
        boolean demo,
        String version,
        int idleMinutes,
        Optional<String> notice,
        Words words) {
    /** A text of the frame. */
    public String text(String key, Object... values) {
        return words.get(key, values);
    }

    /** Address of a file that belongs to the pages; it changes with the version, so that it may be kept long. */
    public String asset(String file) {
        return "/assets/" + Assets.VERSION + "/" + file;
    }

    /** The parts that whoever is signed in can open. */
    public List<Area> areas() {
        return staff.map(user -> Area.openTo(user.roles())).orElse(List.of());
    }

    /** Whether the page belongs to this part. */
    public boolean in(Area other) {
        return area.filter(other::equals).isPresent();
    }
}
