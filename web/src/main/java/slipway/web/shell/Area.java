package slipway.web.shell;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import slipway.care.record.Role;

/** A part of the program with a place in the navigation. */
public enum Area {
    TODAY("today", "/today", EnumSet.of(Role.THERAPIST, Role.ASSISTANT, Role.LEAD)),
    PEOPLE("people", "/people", EnumSet.of(Role.THERAPIST, Role.ASSISTANT, Role.LEAD)),
    BENCH("bench", "/bench", EnumSet.allOf(Role.class)),
    EXERCISES("exercises", "/exercises", EnumSet.allOf(Role.class)),
    VALIDITY("validity", "/validity", EnumSet.allOf(Role.class)),
    CLINIC("clinic", "/clinic", EnumSet.of(Role.LEAD, Role.AUDITOR));

    private final String key;
    private final String address;

    @SuppressWarnings("ImmutableEnumChecker") // never written after construction
    private final Set<Role> roles;

    Area(String key, String address, Set<Role> roles) {
        this.key = key;
        this.address = address;
        this.roles = roles;
    }

    public String key() {
        return key;
    }

    public String address() {
        return address;
    }

    /** The parts that at least one of the roles may open, in the order of the navigation. */
    static List<Area> openTo(Set<Role> held) {
        return Arrays.stream(values())
                .filter(area -> area.roles.stream().anyMatch(held::contains))
                .toList();
    }
}
