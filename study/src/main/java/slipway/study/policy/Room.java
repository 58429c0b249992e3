package slipway.study.policy;

/** The treatment room: here the therapist can see how a set goes. */
public interface Room {
    /**
     * A supervised set.
     *
     * @return whether it went well enough to be sent home
     */
    boolean tried(int rung, int repetitions);
}
