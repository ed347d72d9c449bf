package plantair.vessel;

import java.time.LocalDate;
import java.util.UUID;

/**
 * Damage seen on a receiver, or the word that it is mended, before it is recorded.
 *
 * @param submission made by the form, so that a form sent twice is one record
 * @param receiverId the vessel
 * @param foundOn day it was seen, or looked at again
 * @param kind what was seen
 * @param note free text; never empty for {@link FindingKind#OTHER} and when it clears
 */
public record FindingDraft(UUID submission, long receiverId, LocalDate foundOn, FindingKind kind, String note) {}
