package slipway.web.episode.write;

import java.util.Set;
import slipway.care.record.Role;
import slipway.care.record.papers.Paper;
import slipway.documents.paper.PaperKind;
import slipway.documents.paper.Signed;

/**
 * Who may sign what. An assistant signs the notes of visits and nothing else; such a note needs the signature of a
 * therapist beside it. Who writes reports: Benefit Policy Manual ch. 15 §220.3 in contractors' copies; that an
 * assistant's note is co-signed is common practice, and some laws do not ask for it.
 */
final class Signing {
    private static final Set<Role> CLINICIANS = Set.of(Role.THERAPIST, Role.LEAD);

    private Signing() {}

    /** Whether somebody with these roles may sign a paper of this kind. */
    static boolean maySign(PaperKind kind, Set<Role> roles) {
        return clinician(roles) || (kind == PaperKind.VISIT_NOTE && roles.contains(Role.ASSISTANT));
    }

    /** Whether a signed paper may be co-signed by somebody: a therapist who has not signed it yet. */
    static boolean mayCoSign(Signed signed, String accountId, Set<Role> roles) {
        return clinician(roles)
                && signed.signature().filter(by -> !by.by().equals(accountId)).isPresent()
                && signed.coSignatures().stream().noneMatch(by -> by.by().equals(accountId));
    }

    /** Whether a signed paper waits for the signature of a therapist. */
    static boolean waits(Signed signed, Set<Role> rolesOfSigner) {
        return signed.signature().isPresent()
                && !clinician(rolesOfSigner)
                && signed.coSignatures().isEmpty();
    }

    /** Whether somebody may add to a paper: whoever might have signed it. */
    static boolean mayAdd(Paper paper, PaperKind kind, Set<Role> roles) {
        return paper.signature().isPresent() && maySign(kind, roles);
    }

    private static boolean clinician(Set<Role> roles) {
        return roles.stream().anyMatch(CLINICIANS::contains);
    }
}
