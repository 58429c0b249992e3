package slipway.study.person;

import java.util.Set;

/**
 * What the person tells of one session, or of a day without one.
 *
 * @param day of the course, from 0
 * @param planned repetitions that were asked; 0 on a day without exercise
 * @param repetitions said to be done
 * @param before symptom before, whole points
 * @param worst symptom at worst, whole points, not below before
 * @param settleMinutes whole minutes
 * @param worseMorning whether this morning was worse than the one before
 * @param furtherDown whether symptoms reach further down the limb and stay
 * @param events signs of danger that are told
 */
public record Told(
        int day,
        int planned,
        int repetitions,
        int before,
        int worst,
        int settleMinutes,
        boolean worseMorning,
        boolean furtherDown,
        Set<Event> events) {
    public Told {
        if (before < 0 || worst < before || worst > 10 || settleMinutes < 0 || repetitions < 0) {
            throw new IllegalArgumentException("told: 0 <= before <= worst <= 10 and minutes from 0, was %d, %d, %d"
                    .formatted(before, worst, settleMinutes));
        }
        events = Set.copyOf(events);
    }
}
