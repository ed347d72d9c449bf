package plantair.web;

/**
 * Who is signed in. A controller takes it as a parameter.
 *
 * @param displayName how the person is called
 * @param username what the person types to sign in
 * @param mayManage whether the person may change registers and open what was locked
 */
public record Person(String displayName, String username, boolean mayManage) {

    /** As it stands under a record: {@code Ann Lee (ann)}. */
    public String name() {
        return displayName + " (" + username + ")";
    }
}
