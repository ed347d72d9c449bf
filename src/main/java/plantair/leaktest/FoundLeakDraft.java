package plantair.leaktest;

import java.time.LocalDate;
import java.util.UUID;

/**
 * A found leak before it is recorded.
 *
 * @param submission made by the form, so that a form sent twice is one leak
 * @param siteId the site
 * @param zone id of the site's time zone
 * @param tag what hangs on it
 * @param place where it is
 * @param component what leaks
 * @param size how large it is thought to be
 * @param priority how soon it should be mended
 * @param foundOn day it was found
 * @param foundBy who found it
 * @param note free text, may be empty
 */
public record FoundLeakDraft(
        UUID submission,
        long siteId,
        String zone,
        String tag,
        String place,
        LeakComponent component,
        LeakSize size,
        LeakPriority priority,
        LocalDate foundOn,
        String foundBy,
        String note) {}
