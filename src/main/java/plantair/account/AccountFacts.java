package plantair.account;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import plantair.register.FactLines;
import plantair.register.Facts;

/**
 * What is said of an account; its password is no part of it.
 *
 * @param username what is typed to sign in; never changes
 * @param displayName name of the person
 * @param role what the person may do
 * @param enabled whether the person may sign in
 */
@Embeddable
public record AccountFacts(
        String username,
        String displayName,
        @Enumerated(EnumType.STRING) Role role,
        boolean enabled) implements Facts {

    @Override
    public String name() {
        return username;
    }

    @Override
    public String lines() {
        return new FactLines()
                .add("username", username)
                .add("name", displayName)
                .add("role", role)
                .add("may sign in", enabled)
                .toString();
    }
}
