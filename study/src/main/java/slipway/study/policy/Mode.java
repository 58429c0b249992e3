package slipway.study.policy;

/**
 * Parts of the program's way of dosing that can be left out, to see what each does.
 *
 * @param estimate whether the estimate has a say
 * @param stepRules whether the rules limit steps up; the rules that ease, pause and stop always hold
 * @param limit most excess chance of a flare in a week
 */
record Mode(boolean estimate, boolean stepRules, double limit) {
    Mode {
        if (!(limit > 0 && limit <= 1) || !(estimate || stepRules)) {
            throw new IllegalArgumentException("something must limit steps, and the limit be within 0 and 1");
        }
    }
}
