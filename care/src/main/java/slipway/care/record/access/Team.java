package slipway.care.record.access;

import java.util.Set;

/** People who look after each other's patients. */
public record Team(String id, String clinicId, String name, Set<String> memberIds) {
    public Team {
        memberIds = Set.copyOf(memberIds);
    }
}
