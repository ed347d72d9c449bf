package plantair.testrecord.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.attachment.AttachedFile;

/**
 * What the report of a test says beyond its page.
 *
 * @param instruments what it was read with
 * @param history the test and its corrections, oldest first
 * @param papers photos and papers of the test and of the certificates behind it
 * @param line place of its line in the chain of changes; null when it has none
 * @param digest of that line
 * @param printedAt now, UTC
 */
record ReportView(
        List<Used> instruments,
        List<Entry> history,
        List<AttachedFile> papers,
        @Nullable Long line,
        @Nullable String digest,
        String printedAt) {

    /**
     * An instrument and its certificate on the day of the test.
     *
     * @param tag how the plant calls it
     * @param kind key of what it reads
     * @param certificate number, laboratory and day; empty without one
     * @param traceability to which standard it leads
     * @param dueOn last day; empty without one
     * @param status key of its state on that day
     */
    record Used(String tag, String kind, String certificate, String traceability, String dueOn, String status) {}

    /**
     * A test of the chain of corrections.
     *
     * @param id its number
     * @param isThis whether it is the one of the report
     * @param by who typed it in
     * @param at when, UTC
     * @param reason why it corrects the one before; null for the first
     */
    record Entry(
            long id,
            boolean isThis,
            String by,
            String at,
            @Nullable String reason) {}
}
