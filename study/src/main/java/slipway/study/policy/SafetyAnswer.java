package slipway.study.policy;

import slipway.study.person.Event;
import slipway.study.person.Told;

/** How a therapist who reads a report answers its signs of danger; the program has rules of its own for it. */
final class SafetyAnswer {
    private SafetyAnswer() {}

    static Answer to(Told told) {
        if (told.events().contains(Event.EMERGENCY)) {
            return Answer.EMERGENCY;
        }
        return told.events().isEmpty() ? Answer.NONE : Answer.CONTACT;
    }
}
