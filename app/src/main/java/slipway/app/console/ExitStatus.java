package slipway.app.console;

/** Exit statuses of the program. */
public final class ExitStatus {
    /** Done. */
    public static final int OK = 0;
    /** A fault of the program itself. */
    public static final int FAULT = 1;
    /** The command line or an input file cannot be used; nothing was written. */
    public static final int BAD_INPUT = 2;
    /** No plan, for reasons of safety: the reasons and the letter are the result. */
    public static final int NO_PLAN = 3;
    /** The machine cannot do it: something is missing, or a file cannot be written. */
    public static final int ENVIRONMENT = 4;
    /** A check found damage: a trail that was tampered with, or a backup that is not whole. */
    public static final int DAMAGE = 5;

    private ExitStatus() {}
}
