package plantair.instrument.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import plantair.instrument.AsFound;
import plantair.instrument.CalibrationDraft;
import plantair.instrument.Certificate;
import plantair.instrument.Instrument;
import plantair.register.Submission;

/**
 * Reads the form of a calibration.
 *
 * @param sent the form
 * @param instrument what was calibrated
 */
record CalibrationReader(Submission sent, Instrument instrument) {

    private static final int MOST_YEARS = 10;

    /** In order or not; a tick would make one of the two the silent default. */
    enum InOrder {
        /** It left in order. */
        YES,
        /** It left out of order, or was not adjusted. */
        NO
    }

    /**
     * The calibration; empty when something is wrong with what was typed.
     *
     * @param today the last day that a calibration can have been done
     */
    Optional<CalibrationDraft> read(CalibrationForm form, LocalDate today) {
        var checks = sent.checks();
        Optional<UUID> submission = submission(form.getSubmission());
        Optional<LocalDate> doneOn = checks.date("doneOn", form.getDoneOn(), true);
        if (doneOn.isPresent() && doneOn.get().isAfter(today)) {
            sent.reject("doneOn", "calibration.doneOn.future");
        }
        Optional<LocalDate> dueOn = dueOn(form.getDueOn(), doneOn);
        var number = checks.text("certificateNumber", form.getCertificateNumber(), 80, false);
        var laboratory = checks.text("laboratory", form.getLaboratory(), 120, true);
        var traceability = checks.text("traceability", form.getTraceability(), 1_000, false);
        List<AsFound> points = new PointRows(sent, instrument.facts()).read(form.getPoints());
        var inOrder = checks.choice("leftInOrder", form.getLeftInOrder(), InOrder.class);
        var note = checks.text("note", form.getNote(), 4_000, false);
        if (submission.isEmpty() || doneOn.isEmpty() || dueOn.isEmpty() || laboratory.isEmpty() || inOrder.isEmpty()) {
            return Optional.empty();
        }
        var certificate = new Certificate(
                doneOn.get(),
                dueOn.get(),
                number.orElse(""),
                laboratory.get(),
                traceability.orElse(""),
                inOrder.get() == InOrder.YES,
                note.orElse(""));
        return Optional.of(new CalibrationDraft(submission.get(), instrument, certificate, points));
    }

    /** As typed; else by the plant's own interval. */
    private Optional<LocalDate> dueOn(String typed, Optional<LocalDate> doneOn) {
        Optional<LocalDate> dueOn = sent.checks().date("dueOn", typed, false);
        Integer months = instrument.facts().intervalMonths();
        if (typed.isBlank()) {
            if (months == null) {
                sent.reject("dueOn", "calibration.dueOn.missing");
                return Optional.empty();
            }
            return doneOn.map(day -> day.plusMonths(months));
        }
        if (dueOn.isPresent() && doneOn.isPresent()) {
            if (!dueOn.get().isAfter(doneOn.get())) {
                sent.reject("dueOn", "calibration.dueOn.early");
            } else if (dueOn.get().isAfter(doneOn.get().plusYears(MOST_YEARS))) {
                sent.reject("dueOn", "calibration.dueOn.late");
            }
        }
        return dueOn;
    }

    private Optional<UUID> submission(String typed) {
        try {
            return Optional.of(UUID.fromString(typed));
        } catch (IllegalArgumentException notMadeByTheForm) {
            sent.reject("submission", "calibration.submission");
            return Optional.empty();
        }
    }
}
