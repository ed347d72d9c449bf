package plantair.testrecord.web;

import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import plantair.maintenance.MaintenanceEvent;
import plantair.register.Submission;
import plantair.testrecord.ResultLine;

/**
 * Reads the form of a baseline.
 *
 * @param sent the form
 * @param offer what may be chosen
 */
record BaselineReader(Submission sent, BaselineOffer offer) {

    /**
     * What was chosen.
     *
     * @param submission made by the form
     * @param test the new baseline
     * @param eventId the maintenance behind it; null when it was another reason
     */
    record Chosen(
            UUID submission, ResultLine test, @Nullable Long eventId) {}

    /** The choice; empty when something is wrong with it. */
    Optional<Chosen> read(BaselineForm form) {
        Optional<UUID> submission = submission(form.getSubmission());
        Optional<ResultLine> test = test(form.getTest());
        Optional<Long> event = event(form.getEvent());
        if (form.getEdit().getReason().isBlank()) {
            sent.reject("edit.reason", "text.missing");
        }
        if (submission.isEmpty() || test.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Chosen(submission.get(), test.get(), event.orElse(null)));
    }

    private Optional<ResultLine> test(String typed) {
        Optional<Long> id = sent.checks().id("test", typed, true);
        Optional<ResultLine> test = id.flatMap(offer::test);
        if (id.isPresent() && test.isEmpty()) {
            sent.reject("test", "baseline.test.unknown");
        }
        return test;
    }

    private Optional<Long> event(String typed) {
        Optional<Long> id = sent.checks().id("event", typed, false);
        Optional<Long> event = id.flatMap(offer::event).map(MaintenanceEvent::id);
        if (id.isPresent() && event.isEmpty()) {
            sent.reject("event", "baseline.event.unknown");
        }
        return event;
    }

    private Optional<UUID> submission(String typed) {
        try {
            return Optional.of(UUID.fromString(typed));
        } catch (IllegalArgumentException notMadeByTheForm) {
            sent.reject("submission", "baseline.submission");
            return Optional.empty();
        }
    }
}
