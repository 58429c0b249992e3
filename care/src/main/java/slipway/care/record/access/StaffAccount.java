package slipway.care.record.access;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import slipway.care.record.Role;

/**
 * An account as everybody may see it.
 *
 * @param login small letters, digits, dot, hyphen; unique over all clinics
 * @param roles at least one, all of staff
 * @param active whether it may sign in
 * @param version 1, 2, ...
 */
public record StaffAccount(
        String id,
        String login,
        String displayName,
        String clinicId,
        Set<Role> roles,
        Reach reach,
        boolean active,
        long version) {
    public StaffAccount {
        if (!login.matches("[a-z0-9][a-z0-9.-]{1,39}")) {
            throw new IllegalArgumentException("login must be 2 to 40 small letters, digits, dots or hyphens");
        }
        if (displayName.isBlank() || displayName.length() > 80) {
            throw new IllegalArgumentException("display name must have 1 to 80 characters");
        }
        if (roles.isEmpty() || !roles.stream().allMatch(Role::isStaff)) {
            throw new IllegalArgumentException("an account needs at least one role of staff and no other");
        }
        roles = Collections.unmodifiableSet(EnumSet.copyOf(roles));
    }
}
