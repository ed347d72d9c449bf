package plantair.account;

import java.util.Set;

/** What a person is here for. Each may do what the next one may, and more. */
public enum Role {
    /** Runs the installation. */
    ADMINISTRATOR(Access.READ, Access.RECORD, Access.MANAGE, Access.ADMINISTER),
    /** Answers for the equipment. */
    MANAGER(Access.READ, Access.RECORD, Access.MANAGE),
    /** Makes the tests. */
    TECHNICIAN(Access.READ, Access.RECORD),
    /** Reads and exports all, changes nothing. */
    AUDITOR(Access.READ);

    private final Set<Access> granted;

    Role(Access... granted) {
        this.granted = Set.of(granted);
    }

    /** Whether this role suffices. */
    public boolean may(Access access) {
        return access == Access.ANYBODY || access == Access.OWN_PASSWORD || granted.contains(access);
    }
}
