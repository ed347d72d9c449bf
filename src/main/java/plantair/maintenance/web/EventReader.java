package plantair.maintenance.web;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import plantair.maintenance.EventDraft;
import plantair.maintenance.EventKind;
import plantair.register.Submission;

/**
 * Reads the form of a maintenance event.
 *
 * @param sent the form
 */
record EventReader(Submission sent) {

    private static final int EARLIEST_YEAR = 1950;

    /** Whether the work may have changed the output. */
    enum Step {
        /** It may have. */
        YES,
        /** It cannot have. */
        NO
    }

    /**
     * The event; empty when something is wrong with what was typed.
     *
     * @param today the day at the site
     */
    Optional<EventDraft> read(EventForm form, long compressorId, LocalDate today) {
        var checks = sent.checks();
        Optional<UUID> submission = submission(form.getSubmission());
        Optional<LocalDate> happenedOn = happenedOn(form.getHappenedOn(), today);
        Optional<EventKind> kind = checks.choice("kind", form.getKind(), EventKind.class);
        Optional<Step> step = checks.optionalChoice("mayStep", form.getMayStep(), Step.class);
        var doneBy = checks.text("doneBy", form.getDoneBy(), 120, false);
        var note = checks.text("note", form.getNote(), 4_000, false);
        if (kind.filter(EventKind.OTHER::equals).isPresent() && form.getNote().isBlank()) {
            sent.reject("note", "event.note.missing");
        }
        if (submission.isEmpty() || happenedOn.isEmpty() || kind.isEmpty()) {
            return Optional.empty();
        }
        boolean mayStep = step.map(Step.YES::equals).orElse(kind.get().mayChangeOutput());
        return Optional.of(new EventDraft(
                submission.get(),
                compressorId,
                happenedOn.get(),
                kind.get(),
                mayStep,
                doneBy.orElse(""),
                note.orElse("")));
    }

    private Optional<LocalDate> happenedOn(String typed, LocalDate today) {
        Optional<LocalDate> day = sent.checks().date("happenedOn", typed, true);
        if (day.isPresent() && day.get().isAfter(today)) {
            sent.reject("happenedOn", "event.happenedOn.future");
        } else if (day.isPresent() && day.get().getYear() < EARLIEST_YEAR) {
            sent.reject("happenedOn", "event.happenedOn.early");
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
}
