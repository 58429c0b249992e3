package slipway.store.access;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jooq.DSLContext;
import slipway.care.record.Act;
import slipway.care.record.NotThere;
import slipway.care.record.access.Team;
import slipway.care.record.trail.Chain;
import slipway.store.db.Db;
import slipway.store.db.Ids;
import slipway.store.tables.StaffTable;
import slipway.store.tables.TeamMemberTable;
import slipway.store.tables.TeamTable;
import slipway.store.trail.Note;
import slipway.store.trail.TrailWriter;

/** Teams of a clinic. */
final class Teams {
    private final Db db;
    private final TrailWriter trail;
    private final Ids ids;

    Teams(Db db, TrailWriter trail, Ids ids) {
        this.db = db;
        this.trail = trail;
        this.ids = ids;
    }

    List<Team> list(String clinicId) {
        return db.read(query -> list(query, clinicId));
    }

    private static List<Team> list(DSLContext query, String clinicId) {
        Map<String, String> names = new LinkedHashMap<>();
        query.select(TeamTable.ID, TeamTable.NAME)
                .from(TeamTable.TEAM)
                .where(TeamTable.CLINIC_ID.eq(clinicId))
                .orderBy(TeamTable.NAME, TeamTable.ID)
                .forEach(row -> names.put(row.value1(), row.value2()));
        Map<String, Set<String>> members = query
                .select(TeamMemberTable.TEAM_ID, TeamMemberTable.STAFF_ID)
                .from(TeamMemberTable.TEAM_MEMBER)
                .where(TeamMemberTable.TEAM_ID.in(names.keySet()))
                .fetch()
                .stream()
                .collect(Collectors.groupingBy(
                        row -> row.value1(), Collectors.mapping(row -> row.value2(), Collectors.toSet())));
        return names.entrySet().stream()
                .map(team -> new Team(
                        team.getKey(), clinicId, team.getValue(), members.getOrDefault(team.getKey(), Set.of())))
                .toList();
    }

    Team add(String name, Set<String> memberIds, Act act) {
        var team = new Team(ids.next(act.at()), act.clinicId(), name, memberIds);
        Chain chain = Chain.ofClinic(act.clinicId());
        return trail.write(chain, tx -> {
            tx.insertInto(TeamTable.TEAM)
                    .set(TeamTable.ID, team.id())
                    .set(TeamTable.CLINIC_ID, team.clinicId())
                    .set(TeamTable.NAME, team.name())
                    .execute();
            putMembers(tx, team);
            trail.append(tx, chain, act, Note.created("team", team.id(), 0, team));
            return team;
        });
    }

    void change(Team team, Act act) {
        Chain chain = Chain.ofClinic(act.clinicId());
        trail.write(chain, tx -> {
            Team before = get(tx, team.id(), act);
            tx.update(TeamTable.TEAM)
                    .set(TeamTable.NAME, team.name())
                    .where(TeamTable.ID.eq(team.id()))
                    .execute();
            removeMembers(tx, team.id());
            putMembers(tx, team);
            trail.append(tx, chain, act, Note.changed("team", team.id(), 0, before, team));
            return team;
        });
    }

    void remove(String teamId, Act act) {
        Chain chain = Chain.ofClinic(act.clinicId());
        trail.write(chain, tx -> {
            Team before = get(tx, teamId, act);
            removeMembers(tx, teamId);
            tx.deleteFrom(TeamTable.TEAM).where(TeamTable.ID.eq(teamId)).execute();
            trail.append(tx, chain, act, Note.changed("team/removed", teamId, 0, before, Map.of()));
            return before;
        });
    }

    private static Team get(DSLContext tx, String teamId, Act act) {
        Optional<Team> found = list(tx, act.clinicId()).stream()
                .filter(team -> team.id().equals(teamId))
                .findFirst();
        return found.orElseThrow(() -> new NotThere("team", teamId));
    }

    private static void removeMembers(DSLContext tx, String teamId) {
        tx.deleteFrom(TeamMemberTable.TEAM_MEMBER)
                .where(TeamMemberTable.TEAM_ID.eq(teamId))
                .execute();
    }

    private static void putMembers(DSLContext tx, Team team) {
        for (String staffId : team.memberIds()) {
            if (!tx.fetchExists(tx.selectOne()
                    .from(StaffTable.STAFF)
                    .where(StaffTable.ID.eq(staffId), StaffTable.CLINIC_ID.eq(team.clinicId())))) {
                throw new NotThere("account", staffId);
            }
            tx.insertInto(TeamMemberTable.TEAM_MEMBER)
                    .set(TeamMemberTable.TEAM_ID, team.id())
                    .set(TeamMemberTable.STAFF_ID, staffId)
                    .execute();
        }
    }
}
