package plantair.web;

/**
 * Who is signed in. A controller takes it as a parameter.
 *
 * @param displayName how the person is called
 * @param username what the person types to sign in
 */
public record Person(String displayName, String username) {

    /** As it stands under a record: {@code Ann Lee (ann)}. */
    public String name() {
        return displayName + " (" + username + ")";
    }
}
