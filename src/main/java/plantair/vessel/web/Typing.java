package plantair.vessel.web;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import plantair.quantity.Entered;
import plantair.quantity.GaugePressure;
import plantair.quantity.PressureUnit;
import plantair.register.Submission;
import plantair.vessel.Entry.Correction;
import plantair.web.EnteredField;

/**
 * Reads what the forms of safety records have in common.
 *
 * @param sent the form
 */
record Typing(Submission sent) {

    private static final int EARLIEST_YEAR = 1950;

    /** A valve that opens further off its setting than this part of it was read wrong, or is wrong. */
    private static final double FAR = 0.1;

    /** A gauge pressure above zero. */
    Optional<Entered> pressure(String path, EnteredField field, boolean required) {
        var checks = sent.checks();
        return checks.positive(
                path,
                required
                        ? checks.required(path, field, PressureUnit.class)
                        : checks.optional(path, field, PressureUnit.class));
    }

    /** A day that is not to come. */
    Optional<LocalDate> past(String path, String typed, LocalDate today, boolean required) {
        Optional<LocalDate> day = sent.checks().date(path, typed, required);
        if (day.isPresent() && day.get().isAfter(today)) {
            sent.reject(path, "event.happenedOn.future");
        } else if (day.isPresent() && day.get().getYear() < EARLIEST_YEAR) {
            sent.reject(path, "event.happenedOn.early");
        }
        return day;
    }

    /** The mark that the form carries, so that a form sent twice counts once. */
    Optional<UUID> submission(String typed) {
        try {
            return Optional.of(UUID.fromString(typed));
        } catch (IllegalArgumentException notMadeByTheForm) {
            sent.reject("submission", "event.submission");
            return Optional.empty();
        }
    }

    /**
     * Why a record takes the place of another.
     *
     * @param oldId the one it corrects
     * @param withdrawn what the tick sent
     */
    Correction correction(long oldId, String reason, String withdrawn) {
        if (reason.isBlank()) {
            sent.reject("edit.reason", "text.missing");
        }
        return new Correction(oldId, reason.strip(), Boolean.parseBoolean(withdrawn));
    }

    /** Asks about a pressure above the maximum allowable working pressure. */
    void askAbove(String path, Entered typed, @Nullable Entered mawp, String code) {
        if (mawp != null && pascals(typed) > pascals(mawp)) {
            sent.warnings().add(path, code, typed.toString(), mawp.toString());
        }
    }

    /** Asks about a valve that opened far from its setting. */
    void askFar(String path, Entered popped, Entered set) {
        if (Math.abs(pascals(popped) - pascals(set)) > FAR * pascals(set)) {
            sent.warnings().add(path, "valveTest.poppedAt.far", popped.toString(), set.toString());
        }
    }

    private static double pascals(Entered typed) {
        return GaugePressure.of(typed).pascals();
    }
}
