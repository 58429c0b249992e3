package slipway.study.run;

/** Which program made a result: results of one version are the same wherever and on how many machines they were made. */
public final class ProgramVersion {
    /** Version of the program; the one place where it is written by hand. {@code ./package} reads this line. */
    public static final String NUMBER = "0.1.0";

    private ProgramVersion() {}
}
