package slipway.app;

import picocli.CommandLine.IVersionProvider;
import slipway.mechanics.evidence.EvidenceHash;
import slipway.study.run.ProgramVersion;

/** What this program is made of. */
public final class Version implements IVersionProvider {
    /** Version of the program. */
    public static final String NUMBER = ProgramVersion.NUMBER;

    @Override
    public String[] getVersion() {
        return new String[] {
            "slipway " + NUMBER, "evidence " + EvidenceHash.sha256(), "Java " + Runtime.version(),
        };
    }
}
