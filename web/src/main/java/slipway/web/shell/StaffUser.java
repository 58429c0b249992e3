package slipway.web.shell;

import java.io.Serializable;
import java.util.Set;
import slipway.care.record.Role;

/**
 * Who is signed in.
 *
 * @param accountId of the account
 * @param clinicId of the clinic that the account belongs to
 * @param name as colleagues see it
 * @param roles what the account may do
 */
public record StaffUser(String accountId, String clinicId, String name, Set<Role> roles) implements Serializable {
    public StaffUser {
        roles = Set.copyOf(roles);
    }
}
