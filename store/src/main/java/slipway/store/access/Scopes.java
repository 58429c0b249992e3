package slipway.store.access;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.jooq.DSLContext;
import slipway.care.record.Act;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.care.record.access.StaffAccount;
import slipway.store.db.Db;
import slipway.store.tables.AccessLinkTable;
import slipway.store.tables.TeamMemberTable;

/** Finds out how far an act sees. Denied unless allowed. */
public final class Scopes {
    private final Db db;

    public Scopes(Db db) {
        this.db = db;
    }

    /** How far an act sees now. */
    public Scope of(Act act) {
        return db.read(query -> of(query, act));
    }

    private static Scope of(DSLContext query, Act act) {
        return switch (act.role()) {
            case PROGRAM -> new Scope.Everything();
            case PATIENT -> ofLink(query, act);
            case THERAPIST, ASSISTANT, LEAD -> ofStaff(query, act);
            case AUDITOR -> new Scope.Nothing();
        };
    }

    private static Scope ofLink(DSLContext query, Act act) {
        return AccessLinks.find(query, AccessLinkTable.ID.eq(act.userId()))
                .filter(link -> link.isUsableAt(act.at()))
                .map(link -> (Scope) new Scope.OfLink(link.episodeId(), link.purpose()))
                .orElseGet(Scope.Nothing::new);
    }

    private static Scope ofStaff(DSLContext query, Act act) {
        Optional<StaffAccount> account = StaffRows.find(query, act.userId())
                .filter(StaffAccount::active)
                .filter(found -> found.clinicId().equals(act.clinicId()))
                .filter(found -> found.roles().contains(act.role()));
        if (account.isEmpty()) {
            return new Scope.Nothing();
        }
        return act.role() == Role.LEAD || account.get().reach() == Reach.CLINIC
                ? new Scope.OfClinic(act.clinicId())
                : new Scope.OfTherapists(act.clinicId(), therapists(query, account.get()), act.userId(), act.at());
    }

    private static Set<String> therapists(DSLContext query, StaffAccount account) {
        var ids = new HashSet<String>();
        ids.add(account.id());
        if (account.reach() == Reach.TEAM) {
            ids.addAll(query.select(TeamMemberTable.STAFF_ID)
                    .from(TeamMemberTable.TEAM_MEMBER)
                    .where(TeamMemberTable.TEAM_ID.in(query.select(TeamMemberTable.TEAM_ID)
                            .from(TeamMemberTable.TEAM_MEMBER)
                            .where(TeamMemberTable.STAFF_ID.eq(account.id()))))
                    .fetch(TeamMemberTable.STAFF_ID));
        }
        return ids;
    }
}
