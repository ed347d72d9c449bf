package plantair.attachment.web;

import java.util.Optional;
import java.util.UUID;
import org.springframework.validation.Errors;

/** The key of a form, by which one sent twice counts once. */
final class SentKey {

    private SentKey() {}

    static Optional<UUID> read(String typed, Errors errors) {
        try {
            return Optional.of(UUID.fromString(typed));
        } catch (IllegalArgumentException notMadeByTheForm) {
            errors.reject("attachment.submission");
            return Optional.empty();
        }
    }
}
