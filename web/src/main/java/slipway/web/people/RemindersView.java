package slipway.web.people;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import slipway.care.record.person.Person;
import slipway.care.record.remind.Consent;

/**
 * What the page of a person says of reminders.
 *
 * @param hasAddress whether an e-mail address is recorded
 * @param moved whether the consent that holds is for another address
 * @param serverSends whether a mail server was set
 */
public record RemindersView(
        String personId, Optional<Consent> consent, boolean hasAddress, boolean moved, boolean serverSends) {
    /** The hour in which a day is over for many; the calendar reminder proposes the same. */
    private static final int USUAL_HOUR = 18;

    static RemindersView of(Person person, Optional<Consent> consent, boolean serverSends) {
        Optional<String> address = person.details().email();
        boolean moved = consent.filter(Consent::holds).isPresent()
                && address.isPresent()
                && !consent.get().isFor(address.get());
        return new RemindersView(person.id(), consent, address.isPresent(), moved, serverSends);
    }

    /** Whether the person wants reminders. */
    public boolean holds() {
        return consent.filter(Consent::holds).isPresent();
    }

    /** The hour to propose. */
    public int hour() {
        return consent.map(Consent::hour).orElse(USUAL_HOUR);
    }

    /** All hours that can be chosen. */
    public List<Integer> hours() {
        return IntStream.rangeClosed(Consent.EARLIEST, Consent.LATEST).boxed().toList();
    }
}
