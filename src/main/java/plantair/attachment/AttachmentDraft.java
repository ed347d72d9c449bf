package plantair.attachment;

import java.util.UUID;

/**
 * A photo or paper to be attached.
 *
 * @param submission made by the form, so that a form sent twice is one attachment
 * @param to kind of the record that it belongs to
 * @param objectId number of that record
 * @param name name of the file, fit to be shown
 * @param description what is on it
 */
public record AttachmentDraft(UUID submission, AttachedTo to, long objectId, String name, String description) {}
