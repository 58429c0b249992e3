package slipway.web.clinic;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import slipway.care.record.Role;
import slipway.care.record.access.Reach;
import slipway.web.form.FormReader;

/**
 * The fields of an account, as text.
 *
 * @param roles words of the roles; may be absent
 */
record StaffForm(String name, String[] roles, String reach) {
    /** Roles that an account can have. */
    static final List<Role> ROLES =
            Arrays.stream(Role.values()).filter(Role::isStaff).toList();

    StaffForm {
        name = FormReader.text(name);
        reach = FormReader.text(reach);
        roles = roles == null ? new String[0] : roles.clone();
    }

    /** The same. */
    @Override
    public String[] roles() {
        return roles.clone();
    }

    /** The roles that were ticked; empty if none was, or a word is none of them. */
    Optional<Set<Role>> rolesRead() {
        Set<Role> read = EnumSet.noneOf(Role.class);
        for (String word : roles) {
            Optional<Role> role = ROLES.stream()
                    .filter(each -> each.name().toLowerCase(Locale.ROOT).equals(word))
                    .findFirst();
            if (role.isEmpty()) {
                return Optional.empty();
            }
            read.add(role.get());
        }
        return read.isEmpty() ? Optional.empty() : Optional.of(read);
    }

    Optional<Reach> reachRead() {
        return Arrays.stream(Reach.values())
                .filter(each -> each.name().toLowerCase(Locale.ROOT).equals(reach))
                .findFirst();
    }

    /** Whether the name may stand. */
    boolean hasName() {
        return name.strip().matches("\\P{Cntrl}{1,80}");
    }
}
