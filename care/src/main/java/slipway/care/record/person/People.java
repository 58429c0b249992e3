package slipway.care.record.person;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import slipway.care.record.Act;
import slipway.care.record.Saving;

/** The people of a clinic. */
public interface People {
    /** Writes a new person into the clinic of the act. */
    Person add(PersonDetails details, Act act);

    /**
     * A person, if the act may see them; the reading is noted in the trail, at most once per person, user and hour.
     */
    Optional<Person> find(String personId, Act act);

    /** Changes a person; {@code version} is the one that was read. */
    Saving<Person> change(String personId, long version, PersonDetails details, Act act);

    /**
     * People of the clinic of the act whose episodes are all closed and of whose record nothing was written since some
     * time, erased ones left out; reading is no writing. Their time of keeping may be over.
     *
     * @param afterId last id of the page before; empty for the first page
     * @param limit most ids, 1 or more
     * @return ids in their order
     */
    List<String> untouchedSince(Instant before, String afterId, int limit, Act act);

    /**
     * Erases what can name or describe a person: details, clinical content, check-ins, documents and the payloads of the
     * trail. Ids, times and digests stay, so that the trail still verifies.
     *
     * @param reason why, and on whose request, 1 to 200 characters without the person's name; kept
     */
    void erase(String personId, String reason, Act act);
}
