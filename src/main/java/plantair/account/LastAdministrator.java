package plantair.account;

/** Nobody could run the installation any more. */
public final class LastAdministrator extends RuntimeException {

    LastAdministrator(String username) {
        super(username + " is the last administrator");
    }
}
