package plantair.backup;

/** A backup or a restore could not be made; the message is for the person who runs the installation. */
public final class BackupFailed extends RuntimeException {

    BackupFailed(String message) {
        super(message);
    }

    BackupFailed(String message, Throwable cause) {
        super(message, cause);
    }
}
